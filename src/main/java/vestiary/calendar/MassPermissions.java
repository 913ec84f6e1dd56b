package vestiary.calendar;

import static vestiary.calendar.Verdict.NOT_PERMITTED;
import static vestiary.calendar.Verdict.PERMITTED;
import static vestiary.calendar.Verdict.WITH_LEAVE;

import java.time.DayOfWeek;

/**
 * Whether a Mass may be said on its day.
 *
 * <p>A wedding on Sunday 6 December 2026, in Advent, takes the Mass of the Sunday. Source: GIRM 371
 * to 381; Paschale solemnitatis 47, 59, 75 to 78; Order of Celebrating Matrimony 32, 34.
 */
final class MassPermissions {

  private static final String HOLY_WEEK = "Paschale solemnitatis 47 to 78";

  private MassPermissions() {}

  /**
   * @param date the day of the Mass by the clock
   * @param day the day the Mass belongs to
   */
  static Permission of(MassRequest request, Day date, Day day) {
    if (isOutsideMass(request.kind())) return outsideMass(request.kind(), date);
    return switch (request.kind()) {
      case OF_THE_DAY -> ofTheDay(request, date);
      case ANTICIPATED -> anticipated(date);
      case CHRISM -> chrism(date);
      case LORDS_SUPPER -> only(MassTimes.isHolyThursday(date), "the evening of Holy Thursday");
      case EASTER_VIGIL ->
          only(
              MassTimes.isHolySaturday(date) || MassTimes.isEasterSunday(date),
              "the night before Easter Sunday");
      default -> byTheTable(request, date);
    };
  }

  static DayKind row(Day day) {
    return DayKind.of(day, day.date().getDayOfWeek() == DayOfWeek.SUNDAY);
  }

  private static boolean isOutsideMass(MassKind kind) {
    return !kind.isMass();
  }

  /** On the two days without Mass only penance and anointing are celebrated. */
  private static Permission outsideMass(MassKind kind, Day date) {
    if (kind == MassKind.GOOD_FRIDAY) return only(MassTimes.isGoodFriday(date), "Good Friday");
    boolean noSacraments = MassTimes.isGoodFriday(date) || MassTimes.isHolySaturday(date);
    if (kind == MassKind.BAPTISM_OUTSIDE_MASS && noSacraments) {
      return refused(
          "On Good Friday and Holy Saturday only penance and anointing are celebrated;"
              + " baptism waits for the Easter Vigil.",
          "Roman Missal, Good Friday 1; Paschale solemnitatis 61, 75");
    }
    return permitted("This liturgy is not a Mass and may be celebrated.", "common practice");
  }

  private static Permission ofTheDay(MassRequest request, Day date) {
    if (MassTimes.isGoodFriday(date) || MassTimes.isHolySaturday(date)) return noMass(date);
    if (!MassTimes.isHolyThursday(date)) {
      return permitted("The Mass of the day may be said.", "GIRM 353 to 355");
    }
    return request.leave() == Leave.BISHOP
        ? new Permission(
            WITH_LEAVE,
            "The bishop's leave is recorded for a Mass beside that of the Lord's Supper.",
            "Paschale solemnitatis 47")
        : refused(
            "On Holy Thursday only the evening Mass of the Lord's Supper is said;"
                + " another needs the bishop's leave.",
            "Paschale solemnitatis 47");
  }

  private static Permission anticipated(Day date) {
    if (MassTimes.isGoodFriday(date)) return noMass(date);
    if (MassTimes.isHolySaturday(date)) {
      return refused(
          "On Holy Saturday no evening Mass is said but the Easter Vigil, after nightfall.",
          "Paschale solemnitatis 78");
    }
    return date.evening().tomorrow()
        ? permitted(date.evening().reason(), date.evening().source())
        : refused(date.evening().reason(), date.evening().source());
  }

  private static Permission chrism(Day date) {
    if (MassTimes.isGoodFriday(date) || MassTimes.isHolySaturday(date)) return noMass(date);
    return permitted(
        "The bishop says it on Holy Thursday morning or on another day near Easter.",
        "Paschale solemnitatis 35, 36");
  }

  private static Permission only(boolean isItsDay, String its) {
    return isItsDay
        ? permitted("It is celebrated on " + its + ".", HOLY_WEEK)
        : refused("It is celebrated only on " + its + ".", HOLY_WEEK);
  }

  private static Permission byTheTable(MassRequest request, Day day) {
    DayKind row = row(day);
    if (row == DayKind.GOOD_FRIDAY_OR_HOLY_SATURDAY) return noMass(day);
    MassColumn column = request.column();
    if (request.isVotive() && Votives.isMystery(request.votiveOf())) {
      return refused(
          "The mysteries of the life of the Lord or of Mary are not said as votive Masses.",
          "GIRM 375");
    }
    if (isFreedFromOrder(request, row)) return freed();
    if (!row.permits(column)) return RefusedMasses.of(request, row);
    return row.needsLeave(column) ? withLeave(column) : permitted(row, column);
  }

  private static boolean isFreedFromOrder(MassRequest request, DayKind row) {
    boolean freeDay = row == DayKind.SUNDAY || row == DayKind.FEAST;
    return request.kind() == MassKind.VARIOUS_NEEDS
        && freeDay
        && Votives.needsNoOrder(request.votiveOf());
  }

  private static Permission freed() {
    return permitted(
        "This Mass may be said here without the bishop's order when its celebration is held.",
        "Roman Missal, rubrics of the Masses for various needs 1, 2, 17, 18");
  }

  private static Permission withLeave(MassColumn column) {
    String whose =
        column == MassColumn.BY_BISHOP
            ? "It is said by the order or leave of the bishop."
            : "It is said since the rector or the celebrant judges that a real need asks for it.";
    return new Permission(WITH_LEAVE, whose, column.source());
  }

  private static Permission permitted(DayKind row, MassColumn column) {
    return permitted("It may be said on " + row.words() + ".", column.source());
  }

  private static Permission noMass(Day day) {
    return refused(
        "No Mass is said on " + day.kept().name().english() + ".",
        "Roman Missal, Good Friday 1; Paschale solemnitatis 59, 75");
  }

  private static Permission permitted(String sentence, String source) {
    return new Permission(PERMITTED, sentence, source);
  }

  private static Permission refused(String sentence, String source) {
    return new Permission(NOT_PERMITTED, sentence, source);
  }
}
