package vestiary.calendar;

/** The year of the weekday readings. Source: General Introduction to the Lectionary 69. */
public enum WeekdayCycle {
  I,
  II;

  /** The cycle of the liturgical year that ends in {@code year}: odd is I, even is II. */
  static WeekdayCycle of(int year) {
    return year % 2 == 1 ? I : II;
  }
}
