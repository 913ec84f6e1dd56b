package vestiary.calendar;

/** The year of the Sunday readings. Source: General Introduction to the Lectionary 66. */
public enum SundayCycle {
  A,
  B,
  C;

  /** The cycle of the liturgical year that ends in {@code year}: a year divisible by three is C. */
  static SundayCycle of(int year) {
    return values()[Math.floorMod(year - 1, 3)];
  }
}
