package vestiary.calendar;

import static vestiary.calendar.Permissions.noMassOn;
import static vestiary.calendar.Permissions.permitted;
import static vestiary.calendar.Permissions.refused;
import static vestiary.calendar.Permissions.withLeave;

import java.time.DayOfWeek;

/**
 * Whether a Mass may be said on its day.
 *
 * <p>A wedding on Sunday 6 December 2026, in Advent, takes the Mass of the Sunday. Source: GIRM 371
 * to 381; Order of Celebrating Matrimony 32, 34.
 */
final class MassPermissions {

  private MassPermissions() {}

  /**
   * @param date the day of the Mass by the clock
   * @param judged the day whose row of the table holds: the next one on its eve
   */
  static Permission of(MassRequest request, Day date, Day judged) {
    if (!request.kind().isMass()) return TriduumPermissions.outsideMass(request.kind(), date);
    return switch (request.kind()) {
      case OF_THE_DAY -> TriduumPermissions.ofTheDay(date, request.leave());
      case ANTICIPATED -> TriduumPermissions.anticipated(date, request.leave());
      case CHRISM -> TriduumPermissions.chrism(date);
      case LORDS_SUPPER -> TriduumPermissions.lordsSupper(date, request);
      case EASTER_VIGIL -> TriduumPermissions.easterVigil(date, request);
      case SCRUTINY -> ScrutinyPermissions.of(judged, request.leave());
      default -> byTheTable(request, date, judged);
    };
  }

  static DayKind row(Day day) {
    return DayKind.of(day, day.date().getDayOfWeek() == DayOfWeek.SUNDAY);
  }

  private static Permission byTheTable(MassRequest request, Day date, Day judged) {
    if (TriduumPermissions.isWithoutMass(date)) return noMassOn(date);
    if (request.isVotive() && Votives.isMystery(request.votiveOf())) {
      return refused(
          Sentence.of(
              "The mysteries of the life of the Lord or of Mary are not said as votive Masses."),
          "GIRM 375");
    }
    DayKind row = row(judged);
    if (isFreedFromOrder(request, row)) return freed();
    return row.permits(request.column())
        ? allowed(row, request.column())
        : RefusedMasses.of(request, row);
  }

  private static boolean isFreedFromOrder(MassRequest request, DayKind row) {
    boolean freeDay = row == DayKind.SUNDAY || row == DayKind.FEAST;
    return freeDay
        && request.kind() == MassKind.VARIOUS_NEEDS
        && Votives.needsNoOrder(request.votiveOf());
  }

  private static Permission freed() {
    return permitted(
        Sentence.of(
            "This Mass may be said here without the bishop's order when its celebration is held."),
        "Roman Missal, rubrics of the Masses for various needs");
  }

  private static Permission allowed(DayKind row, MassColumn column) {
    if (!row.needsLeave(column)) {
      return permitted(Sentence.of("It may be said on %s.", row.words()), column.source());
    }
    return column == MassColumn.BY_BISHOP
        ? withLeave(Sentence.of("It is said by the order or leave of the bishop."), column.source())
        : withLeave(
            Sentence.of(
                "It is said because the rector or the celebrant judges that a real need asks for it."),
            column.source());
  }
}
