package vestiary.calendar;

import java.util.List;

/** What to do instead, when the table does not allow a Mass. */
final class RefusedMasses {

  private RefusedMasses() {}

  static Permission of(MassRequest request, DayKind row) {
    Sentence said = Sentence.of("Not on %s: %s", row.words(), instead(request, row));
    return Permissions.refused(said, request.column().source());
  }

  private static Sentence instead(MassRequest request, DayKind row) {
    return switch (request.column()) {
      case RITUAL ->
          Sentence.of(
              "the sacrament or rite is celebrated within the Mass of the day, in its colour, or outside Mass.");
      case FUNERAL ->
          Sentence.of("the funeral is held outside Mass, and a Mass for the dead said later.");
      case DEAD_ANNIVERSARY, DEAD ->
          Sentence.of("the Mass of the day may be offered for the dead.");
      default -> Sentence.of("the Mass of the day is said%s", otherwise(request, row));
    };
  }

  /** Whose leave would make a votive Mass lawful on that day. */
  private static Sentence otherwise(MassRequest request, DayKind row) {
    if (request.column() == MassColumn.FREE && row.permits(MassColumn.BY_JUDGEMENT)) {
      return Sentence.of(
          ", unless the rector or the celebrant judges that a real need asks for it.");
    }
    return request.column() != MassColumn.BY_BISHOP && row.permits(MassColumn.BY_BISHOP)
        ? Sentence.of(", unless the bishop orders or permits it.")
        : new Sentence(".", List.of());
  }
}
