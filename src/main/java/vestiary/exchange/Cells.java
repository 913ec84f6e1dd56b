package vestiary.exchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The cells of one line, each asked for as what it should be. A cell that is something else is
 * remembered as bad, and then the answer means nothing. A cell that was left out is answered as
 * each method says; if it was required, that is remembered at once.
 */
final class Cells {

  /** Longest text a cell may hold, in characters. */
  static final int LONGEST = 2_000;

  private static final int LONGEST_SHOWN = 80;

  /** Stands for a number that was left out. */
  static final int NOT_SAID = -1;

  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("H:mm").withResolverStyle(ResolverStyle.STRICT);

  private final CsvLine line;
  private final List<BadLine> bad = new ArrayList<>();

  Cells(CsvLine line, List<Column> columns) {
    this.line = line;
    columns.forEach(this::checkText);
  }

  int number() {
    return line.number();
  }

  boolean has(String column) {
    return !text(column).isEmpty();
  }

  /** The text as it stands; empty if left out. */
  String text(String column) {
    return line.cell(column);
  }

  /** The values between bars, without blanks around them; none if left out. */
  List<String> texts(String column) {
    return Arrays.stream(text(column).split("\\|"))
        .map(String::strip)
        .filter(value -> !value.isEmpty())
        .toList();
  }

  /** A name that other lines refer to; empty if left out. */
  String name(String column, Form form) {
    return has(column) ? form(column, text(column), form) : "";
  }

  /** Such names between bars; none if left out. */
  List<String> names(String column, Form form) {
    return texts(column).stream().map(value -> form(column, value, form)).distinct().toList();
  }

  /** One of those words, letter case aside; empty if left out. */
  String word(String column, List<String> words) {
    return has(column) ? oneOf(column, text(column), words) : "";
  }

  /** Such words between bars; none if left out. */
  List<String> words(String column, List<String> words) {
    return texts(column).stream().map(value -> oneOf(column, value, words)).distinct().toList();
  }

  /** A whole number, {@link #NOT_SAID} if left out. */
  int number(String column, Range range) {
    return number(column, range, NOT_SAID);
  }

  /** A whole number, or that other one if left out. */
  int number(String column, Range range, int otherwise) {
    if (!has(column)) {
      return otherwise;
    }
    try {
      int number = Integer.parseInt(text(column));
      if (range.contains(number)) {
        return number;
      }
    } catch (NumberFormatException noWholeNumber) {
      // Refused below like a number out of range, with the same words.
    }
    refuse(column, "Write a whole number from " + range + ".");
    return otherwise;
  }

  /** An angle from minus that bound to plus it, in degrees; not a number if left out. */
  double degrees(String column, int bound) {
    if (!has(column)) {
      return Double.NaN;
    }
    try {
      double degrees = Double.parseDouble(text(column));
      if (Math.abs(degrees) <= bound) {
        return degrees;
      }
    } catch (NumberFormatException noNumber) {
      // Refused below like an angle out of range, with the same words.
    }
    refuse(column, "Write degrees with a decimal point, from -%d to %d.".formatted(bound, bound));
    return Double.NaN;
  }

  /** Whether the cell says yes; no if left out. */
  boolean flag(String column) {
    return List.of("true", "yes").contains(word(column, List.of("true", "false", "yes", "no")));
  }

  /** A date in that year or later, or that other one if left out. */
  LocalDate date(String column, int firstYear, LocalDate otherwise) {
    return date(column, (cell, church) -> Optional.of(IsoDate.parse(cell, firstYear)), "")
        .orElse(otherwise);
  }

  /** A date by those words; empty if left out or if there is no such day. */
  Optional<LocalDate> date(String column, DateWords words, String church) {
    try {
      return has(column) ? words.resolve(text(column), church) : Optional.empty();
    } catch (DateTimeException notUnderstood) {
      refuse(column, notUnderstood.getMessage());
      return Optional.empty();
    }
  }

  /** Times of day between bars, by the 24-hour clock; none if left out. */
  List<LocalTime> times(String column) {
    List<LocalTime> times = new ArrayList<>();
    for (String value : texts(column)) {
      try {
        times.add(LocalTime.parse(value, CLOCK));
      } catch (DateTimeParseException noTime) {
        refuse(column, "Write hours and minutes from 00:00 to 23:59, for example 18:30.");
      }
    }
    return times;
  }

  /** A time of day; midnight if left out. */
  LocalTime time(String column) {
    List<LocalTime> times = times(column);
    if (times.size() > 1) {
      refuse(column, "Write one time.");
    }
    return times.isEmpty() ? LocalTime.MIDNIGHT : times.get(0);
  }

  /** Remembers that the cell is bad; the sentence says what may stand there. */
  void refuse(String column, String wanted) {
    String text = text(column);
    String shown = text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "…" : text;
    String reason =
        text.isEmpty() ? wanted : "\"%s\" cannot stand here. %s".formatted(shown, wanted);
    bad.add(new BadLine(line.number(), column, reason));
  }

  /** The line built from these cells, or what is wrong with them. */
  <T> Reading<T> reading(Supplier<T> built) {
    return bad.isEmpty() ? Reading.of(built.get()) : Reading.bad(bad);
  }

  private void checkText(Column column) {
    String text = text(column.name());
    if (column.required() && text.isEmpty()) {
      bad.add(
          new BadLine(line.number(), column.name(), "The cell is empty; it must be filled in."));
    }
    if (text.length() > LONGEST) {
      refuse(column.name(), "Write at most %,d characters.".formatted(LONGEST));
    }
    if (text.chars().anyMatch(c -> Character.isISOControl(c) && "\n\r\t".indexOf(c) < 0)) {
      refuse(column.name(), "Take out the character that cannot be printed.");
    }
  }

  private String form(String column, String value, Form form) {
    String name = form.cased(value);
    if (!form.fits(name)) {
      refuse(column, form.wanted());
    }
    return name;
  }

  private String oneOf(String column, String value, List<String> words) {
    String word = value.toLowerCase(Locale.ROOT);
    if (!words.contains(word)) {
      refuse(column, "Write one of: %s.".formatted(String.join(", ", words)));
    }
    return word;
  }
}
