package vestiary.exchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;

/** Dates as files write them: year-month-day by ISO 8601. */
final class IsoDate {

  /** First year the calendar is valid for. */
  static final int FIRST_YEAR = 1970;

  /** Last year the calendar is valid for. */
  static final int LAST_YEAR = 2300;

  private static final DateTimeFormatter FORM =
      DateTimeFormatter.ofPattern("uuuu-MM-dd").withResolverStyle(ResolverStyle.STRICT);

  private IsoDate() {}

  /**
   * The date written so.
   *
   * @throws DateTimeException if there is no such date, or it lies before that first year or after
   *     {@link #LAST_YEAR}; its message says what may stand there
   */
  static LocalDate parse(String text, int firstYear) {
    String wanted =
        "Write year-month-day, for example 2026-12-08, in the years %d to %d."
            .formatted(firstYear, LAST_YEAR);
    LocalDate date;
    try {
      date = LocalDate.parse(text, FORM);
    } catch (DateTimeException anotherForm) {
      throw new DateTimeException(wanted, anotherForm);
    }
    if (date.getYear() < firstYear || date.getYear() > LAST_YEAR) {
      throw new DateTimeException(wanted);
    }
    return date;
  }
}
