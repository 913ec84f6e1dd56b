package vestiary.calendar;

import java.time.DayOfWeek;
import java.util.Locale;

/** The number words and weekday names that the names of Sundays and weekdays are made of. */
final class OrdinalNames {

  private static final String[] UNITS = {
    "",
    "First",
    "Second",
    "Third",
    "Fourth",
    "Fifth",
    "Sixth",
    "Seventh",
    "Eighth",
    "Ninth",
    "Tenth",
    "Eleventh",
    "Twelfth",
    "Thirteenth",
    "Fourteenth",
    "Fifteenth",
    "Sixteenth",
    "Seventeenth",
    "Eighteenth",
    "Nineteenth"
  };
  private static final String[] ROMAN_UNITS = {
    "", "I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX"
  };
  private static final String[] ENGLISH = {
    "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"
  };
  private static final String[] LATIN = {
    "Feria II", "Feria III", "Feria IV", "Feria V", "Feria VI", "Sabbato", "Dominica"
  };
  private static final String[] SPANISH = {
    "Lunes", "Martes", "Miércoles", "Jueves", "Viernes", "Sábado", "Domingo"
  };

  private OrdinalNames() {}

  /** {@code Twenty-first} for 21; from 1 to 34. */
  static String english(int number) {
    if (number < 20) return UNITS[number];
    String tens = number < 30 ? "Twent" : "Thirt";
    return number % 10 == 0
        ? tens + "ieth"
        : tens + "y-" + UNITS[number % 10].toLowerCase(Locale.ROOT);
  }

  /** {@code XXI} for 21; from 1 to 39. */
  static String roman(int number) {
    return "X".repeat(number / 10) + ROMAN_UNITS[number % 10];
  }

  static String english(DayOfWeek weekday) {
    return ENGLISH[weekday.ordinal()];
  }

  static String latin(DayOfWeek weekday) {
    return LATIN[weekday.ordinal()];
  }

  static String spanish(DayOfWeek weekday) {
    return SPANISH[weekday.ordinal()];
  }
}
