package vestiary.calendar;

/** The day of Easter in the Gregorian calendar. */
final class Computus {

  private Computus() {}

  /**
   * The day of the year on which Easter falls: 90 (31 March) in 2024.
   *
   * <p>Source: the tables of the Gregorian reform as reckoned by Clavius; the Sunday after the full
   * moon of the lunar age (epact) that falls on or after 21 March.
   */
  static int easter(int year) {
    int goldenNumber = year % 19 + 1;
    int century = year / 100 + 1;
    int epact = epact(goldenNumber, century);
    int fullMoon = 44 - epact;
    if (fullMoon < 21) fullMoon += 30;
    int daysToSunday = (5 * year / 4 - (3 * century / 4 - 12) - 10 + fullMoon) % 7;
    int dayOfMarch = fullMoon + 7 - daysToSunday;
    return 59 + leapDay(year) + dayOfMarch;
  }

  /** The age of the moon on 1 January, with the two exceptions that keep full moons apart. */
  private static int epact(int goldenNumber, int century) {
    int skippedLeapYears = 3 * century / 4 - 12;
    int moonCorrection = (8 * century + 5) / 25 - 5;
    int epact = Math.floorMod(11 * goldenNumber + 20 + moonCorrection - skippedLeapYears, 30);
    return epact == 24 || epact == 25 && goldenNumber > 11 ? epact + 1 : epact;
  }

  private static int leapDay(int year) {
    return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0) ? 1 : 0;
  }
}
