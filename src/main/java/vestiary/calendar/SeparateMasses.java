package vestiary.calendar;

/** The Masses of the table that never take a day and are said beside it. */
final class SeparateMasses {

  static final Celebration CHRISM = get("chrism-mass");
  static final Celebration LORDS_SUPPER = get("lords-supper");
  static final Celebration EASTER_VIGIL = get("easter-vigil");

  private SeparateMasses() {}

  private static Celebration get(String id) {
    return CelebrationTable.movable().stream()
        .map(Entry::celebration)
        .filter(celebration -> celebration.id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
