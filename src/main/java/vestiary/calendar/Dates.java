package vestiary.calendar;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.Locale;

/** Dates as the sentences of the calendar spell them. */
final class Dates {

  private Dates() {}

  /** {@code Monday 8 April 2024}. */
  static String spelled(LocalDate date) {
    return OrdinalNames.english(date.getDayOfWeek())
        + " "
        + date.getDayOfMonth()
        + " "
        + date.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH)
        + " "
        + date.getYear();
  }
}
