package vestiary.calendar;

/** What to do instead, when the table does not allow a Mass. */
final class RefusedMasses {

  private RefusedMasses() {}

  static Permission of(MassRequest request, DayKind row) {
    String sentence = "Not on " + row.words() + ": " + instead(request, row);
    return Permissions.refused(sentence, request.column().source());
  }

  private static String instead(MassRequest request, DayKind row) {
    return switch (request.column()) {
      case RITUAL ->
          "the sacrament or rite is celebrated within the Mass of the day, in its colour,"
              + " or outside Mass.";
      case FUNERAL -> "the funeral is held outside Mass, and a Mass for the dead said later.";
      case DEAD_ANNIVERSARY, DEAD -> "the Mass of the day may be offered for the dead.";
      default -> "the Mass of the day is said" + otherwise(request, row);
    };
  }

  /** Whose leave would make a votive Mass lawful on that day. */
  private static String otherwise(MassRequest request, DayKind row) {
    if (request.column() == MassColumn.FREE && row.permits(MassColumn.BY_JUDGEMENT)) {
      return ", unless the rector or the celebrant judges that a real need asks for it.";
    }
    return request.column() != MassColumn.BY_BISHOP && row.permits(MassColumn.BY_BISHOP)
        ? ", unless the bishop orders or permits it."
        : ".";
  }
}
