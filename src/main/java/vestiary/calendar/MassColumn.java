package vestiary.calendar;

/** A column of the table of Masses that may be said beside the Mass of the day. */
enum MassColumn {
  /** Tied to a sacrament or rite. */
  RITUAL("GIRM 372"),
  /** Votive or for various needs, ordered or permitted by the bishop. */
  BY_BISHOP("GIRM 374"),
  /** Votive or for various needs, by the judgement of the rector or the celebrant. */
  BY_JUDGEMENT("GIRM 376"),
  /** Votive or for various needs, at free choice. */
  FREE("GIRM 375, 377"),
  FUNERAL("GIRM 380"),
  /** For the dead: news of a death, final burial, first anniversary. */
  DEAD_ANNIVERSARY("GIRM 381 a"),
  /** Any other Mass for the dead. */
  DEAD("GIRM 381 b");

  private final String source;

  MassColumn(String source) {
    this.source = source;
  }

  String source() {
    return source;
  }

  /** The column of a Mass; votive Masses go by the leave recorded with them. */
  static MassColumn of(MassKind kind, Leave leave) {
    return switch (kind) {
      case FUNERAL -> FUNERAL;
      case DEAD_ANNIVERSARY -> DEAD_ANNIVERSARY;
      case DEAD -> DEAD;
      case VOTIVE, VARIOUS_NEEDS -> of(leave);
      default -> RITUAL;
    };
  }

  private static MassColumn of(Leave leave) {
    return switch (leave) {
      case BISHOP -> BY_BISHOP;
      case RECTOR, CELEBRANT -> BY_JUDGEMENT;
      case NONE -> FREE;
    };
  }
}
