package vestiary.calendar;

import static vestiary.calendar.Permissions.noMassOn;
import static vestiary.calendar.Permissions.permitted;
import static vestiary.calendar.Permissions.refused;
import static vestiary.calendar.Permissions.withLeave;

/**
 * What the days around Easter allow of the Mass of the day and of their own liturgies.
 *
 * <p>On Holy Saturday, 4 April 2026, an evening Mass of Sunday at 18:00 is refused and the Vigil
 * after nightfall is said. Source: Paschale solemnitatis 35 to 78; Roman Missal.
 */
final class TriduumPermissions {

  private static final String HOLY_WEEK = "Paschale solemnitatis 47 to 78";

  private TriduumPermissions() {}

  static Permission ofTheDay(Day date, Leave leave) {
    if (isWithoutMass(date)) return noMassOn(date);
    if (!MassTimes.isHolyThursday(date)) {
      return permitted(Sentence.of("The Mass of the day may be said."), "GIRM 353 to 355");
    }
    return leave == Leave.BISHOP
        ? withLeave(
            Sentence.of(
                "The bishop's leave is recorded for a Mass beside that of the Lord's Supper."),
            "Paschale solemnitatis 47")
        : refused(
            Sentence.of(
                "On Holy Thursday only the evening Mass of the Lord's Supper is said; another needs the bishop's leave."),
            "Paschale solemnitatis 47");
  }

  static Permission anticipated(Day date, Leave leave) {
    if (MassTimes.isGoodFriday(date)) return noMassOn(date);
    if (MassTimes.isHolySaturday(date)) {
      return refused(
          Sentence.of(
              "On Holy Saturday no evening Mass is said but the Easter Vigil, after nightfall."),
          "Paschale solemnitatis 78");
    }
    Evening evening = date.evening();
    if (evening.tomorrow() || evening.leeway() == Leeway.EITHER) {
      return permitted(evening.why(), evening.source());
    }
    boolean byLeave = leave == Leave.RECTOR || leave == Leave.BISHOP;
    return evening.leeway() == Leeway.BY_LEAVE && byLeave
        ? withLeave(
            Sentence.of(
                "The Vigil Mass of the next day is said because the good of the faithful asks for it."),
            "Common practice, no source")
        : refused(evening.why(), evening.source());
  }

  static Permission chrism(Day date) {
    if (isWithoutMass(date)) return noMassOn(date);
    return permitted(
        Sentence.of("The bishop says it on Holy Thursday morning or on another day near Easter."),
        "Paschale solemnitatis 35, 36");
  }

  static Permission lordsSupper(Day date, MassRequest request) {
    boolean itsEvening = MassTimes.isHolyThursday(date) && !request.isBeforeNoon();
    return only(itsEvening, Sentence.of("the evening of Holy Thursday"));
  }

  /** Nightfall and dawn are not reckoned: the Vigil is refused only on the wrong side of noon. */
  static Permission easterVigil(Day date, MassRequest request) {
    boolean itsNight =
        request.isBeforeNoon() ? MassTimes.isEasterSunday(date) : MassTimes.isHolySaturday(date);
    return only(itsNight, Sentence.of("the night before Easter Sunday"));
  }

  /** On the two days without Mass no sacrament is celebrated but penance and anointing. */
  static Permission outsideMass(MassKind kind, Day date) {
    if (kind == MassKind.GOOD_FRIDAY)
      return only(MassTimes.isGoodFriday(date), Sentence.of("Good Friday"));
    if (kind == MassKind.BAPTISM_OUTSIDE_MASS && isWithoutMass(date)) {
      return refused(
          Sentence.of(
              "On Good Friday and Holy Saturday only penance and anointing are celebrated; baptism waits for the Easter Vigil."),
          "Roman Missal, Good Friday 1; Paschale solemnitatis 61, 75");
    }
    return permitted(
        Sentence.of("This liturgy is not a Mass and may be celebrated."), "common practice");
  }

  static boolean isWithoutMass(Day date) {
    return MassTimes.isGoodFriday(date) || MassTimes.isHolySaturday(date);
  }

  private static Permission only(boolean isItsDay, Sentence its) {
    return isItsDay
        ? permitted(Sentence.of("It is celebrated on %s.", its), HOLY_WEEK)
        : refused(Sentence.of("It is celebrated only on %s.", its), HOLY_WEEK);
  }
}
