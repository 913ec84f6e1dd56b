package vestiary.exchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

/** How the date cells of Masses and care are understood. */
@FunctionalInterface
public interface DateWords {

  /** Year-month-day by ISO 8601 and nothing else, in the years that the calendar is valid for. */
  DateWords ISO = (cell, church) -> Optional.of(IsoDate.parse(cell, IsoDate.FIRST_YEAR));

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
}
