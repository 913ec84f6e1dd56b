package vestiary.calendar;

/**
 * Which Mass is said, or which other liturgy that needs vestments is celebrated.
 *
 * <p>Source: GIRM 371 to 381 for the Masses; the liturgies from {@link #GOOD_FRIDAY} on are not
 * Masses.
 */
public enum MassKind implements Term {
  OF_THE_DAY,
  ANTICIPATED,
  WEDDING,
  FUNERAL,
  CONFIRMATION,
  BAPTISM,
  ANOINTING,
  /** A scrutiny of those who prepare for baptism. */
  SCRUTINY,
  ORDINATION,
  PROFESSION,
  DEDICATION,
  DEAD_ANNIVERSARY,
  DEAD,
  VOTIVE,
  VARIOUS_NEEDS,
  CHRISM,
  LORDS_SUPPER,
  EASTER_VIGIL,
  GOOD_FRIDAY,
  BENEDICTION,
  PROCESSION,
  BAPTISM_OUTSIDE_MASS,
  FUNERAL_OUTSIDE_MASS,
  OTHER;

  /** Whether it is the Mass of a day, or one that belongs to the days before Easter. */
  boolean isOfTheDays() {
    return switch (this) {
      case OF_THE_DAY, ANTICIPATED, CHRISM, LORDS_SUPPER, EASTER_VIGIL -> true;
      default -> !isMass();
    };
  }

  /**
   * Whether a deacon may lead it as a priest may: Benediction (Holy Communion and Worship of the
   * Eucharist 91), a procession, baptism (can. 861 § 1, from memory) and a funeral without Mass
   * (Order of Christian Funerals 14, from memory). The celebration of the Passion is a priest’s
   * (Roman Missal, Good Friday 5), and of another liturgy nobody has said what it is.
   */
  public boolean canBeLedByDeacon() {
    return switch (this) {
      case BENEDICTION, PROCESSION, BAPTISM_OUTSIDE_MASS, FUNERAL_OUTSIDE_MASS -> true;
      default -> false;
    };
  }

  /** Whether the Eucharist is celebrated. */
  public boolean isMass() {
    return ordinal() < GOOD_FRIDAY.ordinal();
  }
}
