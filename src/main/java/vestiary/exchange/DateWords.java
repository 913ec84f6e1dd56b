package vestiary.exchange;

import static vestiary.web.Speech.say;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

/** How date cells are understood. */
@FunctionalInterface
public interface DateWords {

  /** Last year the calendar is valid for. */
  int LAST_YEAR = 2300;

  /** Year-month-day by ISO 8601 and nothing else, in the years that the calendar is valid for. */
  DateWords ISO = iso(1970);

  /**
   * The date that a cell names.
   *
   * @param cell text of the cell, not blank
   * @param church slug of the church the line is about, empty if it is about none
   * @return empty if the words are understood and there is no such day, so that the line asks for
   *     nothing
   * @throws DateTimeException if the words are not understood; its message says what may stand
   *     there
   */
  Optional<LocalDate> resolve(String cell, String church);

  /** Year-month-day by ISO 8601 and nothing else, from that year to {@link #LAST_YEAR}. */
  static DateWords iso(int firstYear) {
    return (cell, church) -> Optional.of(parse(cell, firstYear));
  }

  private static LocalDate parse(String cell, int firstYear) {
    String wanted =
        say(
            "Write year-month-day, for example 2026-12-08, in the years %d to %d.",
            firstYear, LAST_YEAR);
    LocalDate date;
    try {
      date = LocalDate.parse(cell);
    } catch (DateTimeException anotherForm) {
      throw new DateTimeException(wanted, anotherForm);
    }
    if (date.getYear() < firstYear || date.getYear() > LAST_YEAR) {
      throw new DateTimeException(wanted);
    }
    return date;
  }
}
