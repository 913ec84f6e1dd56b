package vestiary.calendar;

import java.util.Set;

/**
 * To which day the Mass of an evening belongs.
 *
 * <p>Only a Sunday or a solemnity begins the evening before. Of two great days the one that obliges
 * takes the evening; if both do or neither, the one that stands first in the table. On 24 December
 * 2028, a Sunday, the evening is Christmas. Before a solemnity that does not oblige and has no
 * Vigil Mass, no law settles the evening, and the cluster's choice is taken. Source: UNLY 3, 11,
 * 61; Notitiae 20 (1984), or Notitiae 10 (1974) 222 under {@link EveningRule#RANK}.
 */
final class EveningRules {

  private static final Evening NOTHING_FOLLOWS =
      new Evening(
          false,
          Leeway.NONE,
          Sentence.of(
              "The evening is still this day's, since neither a Sunday nor a solemnity follows."),
          "UNLY 3, 11, 13");
  private static final Evening HOLY_THURSDAY =
      new Evening(
          false,
          Leeway.NONE,
          Sentence.of(
              "The evening Mass of the Lord's Supper, in white, begins the Paschal Triduum."),
          "UNLY 19; Paschale solemnitatis 44 to 46");
  private static final Evening GOOD_FRIDAY =
      new Evening(
          false,
          Leeway.NONE,
          Sentence.of("The evening is still Good Friday's; no Mass is said."),
          "UNLY 19; Roman Missal, Good Friday 1");
  private static final Evening HOLY_SATURDAY =
      new Evening(
          true,
          Leeway.NONE,
          Sentence.of(
              "After nightfall the Easter Vigil begins Easter Sunday; no other Mass is said."),
          "UNLY 21; Paschale solemnitatis 78");

  /** Solemnities with a Vigil Mass in the Missal. UNLY 11. */
  private static final Set<String> VIGIL_MASSES =
      Set.of(
          "nativity-of-the-lord",
          "epiphany",
          "epiphany-sunday",
          "ascension-thursday",
          "ascension-sunday",
          "pentecost",
          "nativity-of-john-the-baptist",
          "peter-and-paul",
          "assumption");

  private final Evenings settled;

  EveningRules(Evenings settled) {
    this.settled = settled;
  }

  Evening between(Eve today, Eve tomorrow) {
    if (today.kept().precedence() == Precedence.TRIDUUM && !today.sunday()) {
      return today.kept().id().equals("good-friday") ? GOOD_FRIDAY : HOLY_SATURDAY;
    }
    if (HolyThursday.is(today.kept())) return HOLY_THURSDAY;
    if (!beginsTheEveningBefore(tomorrow)) return NOTHING_FOLLOWS;
    if (today.endsBeforeEvening()) return afterNone(tomorrow);
    if (isOpen(today, tomorrow)) return open(tomorrow);
    if (settled.rule() == EveningRule.PRECEPT && today.obliges() != tomorrow.obliges()) {
      return byPrecept(tomorrow);
    }
    return byRank(today, tomorrow);
  }

  /** On 18 March neither day obliges and Saint Joseph has no Vigil Mass: no law says which. */
  private static boolean isOpen(Eve today, Eve tomorrow) {
    return !today.obliges()
        && !tomorrow.obliges()
        && tomorrow.kept().precedence().isBefore(today.kept().precedence())
        && !hasVigilMass(tomorrow);
  }

  /** In 2022 the Baptist was kept on 23 June until None, the Sacred Heart from that evening on. */
  private static Evening afterNone(Eve tomorrow) {
    Sentence.Named name = Sentence.Named.within(tomorrow.kept().name());
    return new Evening(
        true,
        Leeway.NONE,
        Sentence.of(
            "The evening Mass is already of the next day, %s, whose date this day gave way to.",
            name),
        "Congregation for Divine Worship, note of 11 May 2020");
  }

  private Evening open(Eve tomorrow) {
    Sentence.Named name = Sentence.Named.within(tomorrow.kept().name());
    boolean next = settled.open() == OpenEvening.SOLEMNITY;
    Sentence why =
        next
            ? Sentence.of(
                "No law settles this evening; here it is already that of the next day, %s. The Mass of this day may be said as well.",
                name)
            : Sentence.of(
                "No law settles this evening; here it is still this day's. The Mass of the next day, %s, may be said as well.",
                name);
    return new Evening(next, Leeway.EITHER, why, "UNLY 11, 61; common practice");
  }

  private static boolean hasVigilMass(Eve day) {
    return VIGIL_MASSES.contains(day.kept().id());
  }

  /** Neither a weekday of the Easter octave nor All Souls on a weekday is anticipated. */
  private static boolean beginsTheEveningBefore(Eve day) {
    if (day.sunday()) return true;
    Precedence place = day.kept().precedence();
    return day.kept().rank() == Rank.SOLEMNITY
        && place != Precedence.EASTER_OCTAVE
        && place != Precedence.ALL_SOULS;
  }

  private static Evening byPrecept(Eve tomorrow) {
    Sentence.Named name = Sentence.Named.within(tomorrow.kept().name());
    Sentence why =
        tomorrow.obliges()
            ? Sentence.of("The evening Mass is already of the next day, %s, which obliges.", name)
            : Sentence.of(
                "The evening is still this day's: it obliges and the next day, %s, does not.",
                name);
    boolean byLeave = !tomorrow.obliges() && hasVigilMass(tomorrow);
    return new Evening(
        tomorrow.obliges(),
        byLeave ? Leeway.BY_LEAVE : Leeway.NONE,
        why,
        "Notitiae 20 (1984); UNLY 61");
  }

  private static Evening byRank(Eve today, Eve tomorrow) {
    boolean next = tomorrow.kept().precedence().isBefore(today.kept().precedence());
    Sentence.Named name = Sentence.Named.within(tomorrow.kept().name());
    Sentence why =
        next
            ? Sentence.of(
                "The evening Mass is already of the next day, %s, which stands higher.", name)
            : Sentence.of(
                "The evening is still this day's: the next, %s, does not stand higher.", name);
    String source = "UNLY 61; " + tomorrow.kept().precedence().source();
    return new Evening(next, Leeway.NONE, why, source);
  }

  /**
   * What of a day its evening hangs on.
   *
   * @param endsBeforeEvening whether its celebration came back from the next day's date
   */
  record Eve(Celebration kept, boolean sunday, boolean obliges, boolean endsBeforeEvening) {}
}
