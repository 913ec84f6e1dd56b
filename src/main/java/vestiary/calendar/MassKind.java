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

  /** Whether the Eucharist is celebrated. */
  public boolean isMass() {
    return ordinal() < GOOD_FRIDAY.ordinal();
  }
}
