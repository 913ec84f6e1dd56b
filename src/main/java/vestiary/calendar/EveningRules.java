package vestiary.calendar;

/**
 * To which day the Mass of an evening belongs.
 *
 * <p>Only a Sunday or a solemnity begins the evening before. Of two great days the one that obliges
 * takes the evening; if both do or neither, the one that stands first in the table. On 24 December
 * 2028, a Sunday, the evening is Christmas. Source: UNLY 3, 11, 61; Notitiae 20 (1984), or Notitiae
 * 10 (1974) 222 under {@link EveningRule#RANK}.
 */
final class EveningRules {

  private static final Evening NOTHING_FOLLOWS =
      new Evening(
          false,
          "The evening is still this day's, since neither a Sunday nor a solemnity follows.",
          "UNLY 3, 11, 13");
  private static final Evening HOLY_THURSDAY =
      new Evening(
          false,
          "The evening Mass of the Lord's Supper, in white, begins the Paschal Triduum.",
          "UNLY 19; Paschale solemnitatis 44 to 46");
  private static final Evening GOOD_FRIDAY =
      new Evening(
          false,
          "The evening is still Good Friday's; no Mass is said.",
          "UNLY 19; Roman Missal, Good Friday 1");
  private static final Evening HOLY_SATURDAY =
      new Evening(
          true,
          "After nightfall the Easter Vigil begins Easter Sunday; no other Mass is said.",
          "UNLY 21; Paschale solemnitatis 78");
  private final EveningRule rule;

  EveningRules(EveningRule rule) {
    this.rule = rule;
  }

  Evening between(Eve today, Eve tomorrow) {
    if (today.kept().precedence() == Precedence.TRIDUUM && !today.sunday()) {
      return today.kept().id().equals("good-friday") ? GOOD_FRIDAY : HOLY_SATURDAY;
    }
    if (HolyThursday.is(today.kept())) return HOLY_THURSDAY;
    if (!beginsTheEveningBefore(tomorrow)) return NOTHING_FOLLOWS;
    if (rule == EveningRule.PRECEPT && today.obliges() != tomorrow.obliges()) {
      return byPrecept(tomorrow);
    }
    return byRank(today, tomorrow);
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
    String name = tomorrow.kept().name().english();
    String reason =
        tomorrow.obliges()
            ? "The evening Mass is already of the next day, " + name + ", which obliges."
            : "The evening is still this day's: it obliges and the next day, "
                + name
                + ", does not.";
    return new Evening(tomorrow.obliges(), reason, "Notitiae 20 (1984); UNLY 61");
  }

  private static Evening byRank(Eve today, Eve tomorrow) {
    boolean next = tomorrow.kept().precedence().isBefore(today.kept().precedence());
    String name = tomorrow.kept().name().english();
    String reason =
        next
            ? "The evening Mass is already of the next day, " + name + ", which stands higher."
            : "The evening is still this day's: the next, " + name + ", does not stand higher.";
    return new Evening(next, reason, "UNLY 61; " + tomorrow.kept().precedence().source());
  }

  /** What of a day its evening hangs on. */
  record Eve(Celebration kept, boolean sunday, boolean obliges) {}
}
