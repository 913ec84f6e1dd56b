package vestiary.exchange;

import java.time.LocalTime;
import java.util.Collection;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import vestiary.problem.DayOrder;

/** Cells that hold a day and a time in one, as 24.12.2026 18:30. */
final class DayAndTime {

  /** Our columns that one column of a file may stand for together. */
  static final String DATE = "date";

  static final String TIME = "time";

  /** The words before a time, and at most two after it, as in 6:30 p. m. */
  private static final Pattern BOTH =
      Pattern.compile(
          "(.*?\\d)(?:T|,?\\h+(?:um |at |a las )?)(\\d{1,2}[:.h]\\d{2}\\S*(?:\\h?\\S{1,5}){0,2})");

  private DayAndTime() {}

  /**
   * That part of a cell which is read in a column that looks so; all of it where it has no parts.
   */
  static String part(Looks looks, String cell) {
    return switch (looks) {
      case DATE -> dayIn(cell);
      case TIME -> timeIn(cell);
      default -> cell;
    };
  }

  /** That part of a cell which is a day. */
  static String dayIn(String cell) {
    Matcher both = BOTH.matcher(cell);
    return both.matches() ? both.group(1).strip() : cell;
  }

  /** That part of a cell which is a time. */
  static String timeIn(String cell) {
    Matcher both = BOTH.matcher(cell);
    return both.matches() ? both.group(2).strip() : cell;
  }

  /**
   * Whether most of these cells hold a day and a time. Midnight throughout is none: spreadsheets
   * write it behind every day that has no time (common practice, no source).
   */
  static boolean isIn(Collection<String> cells) {
    return cells.stream().filter(cell -> time(cell).isPresent()).count() * 2 > cells.size()
        && cells.stream()
            .flatMap(cell -> time(cell).stream())
            .anyMatch(t -> t.isAfter(LocalTime.MIDNIGHT));
  }

  private static Optional<LocalTime> time(String cell) {
    return DayOrder.isDay(dayIn(cell)) ? ClockWords.find(timeIn(cell)) : Optional.empty();
  }
}
