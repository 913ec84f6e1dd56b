package vestiary.exchange;

import static vestiary.web.Speech.say;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * The cells of one line, each asked for as what it should be. A cell that is something else is
 * remembered as bad and answered as if it had been left out; a required cell that was left out is
 * remembered at once.
 */
final class Cells {

  /** Stands for a number that was left out. */
  static final int NOT_SAID = -1;

  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("H:mm").withResolverStyle(ResolverStyle.STRICT);

  private final CsvLine line;
  private final List<BadLine> bad = new ArrayList<>();

  Cells(CsvLine line, List<Column> columns) {
    this.line = line;
    columns.forEach(c -> c.faults(text(c.name())).forEach(wanted -> refuse(c.name(), wanted)));
  }

  int line() {
    return line.number();
  }

  boolean has(String column) {
    return !text(column).isEmpty();
  }

  /** Whether the file has that column at all. */
  boolean isIn(String column) {
    return line.cells().containsKey(column);
  }

  /** The text as it stands; empty if left out. */
  String text(String column) {
    return line.cell(column);
  }

  /** A name that other lines refer to; empty if left out. */
  String name(String column, Form form) {
    return one(column, form::find, form::wanted).orElse("");
  }

  /** One of those words; empty if left out. */
  String word(String column, Words words) {
    return one(column, words::find, () -> say("Write one of: %s.", words)).orElse("");
  }

  /** Such words between bars; none if left out. */
  List<String> words(String column, Words words) {
    return all(column, words::find, () -> say("Write one of: %s.", words));
  }

  /** Whether the cell says yes; no if left out. */
  boolean flag(String column) {
    return List.of("true", "yes").contains(word(column, Words.YES_OR_NO));
  }

  /** A whole number, {@link #NOT_SAID} if left out. */
  int number(String column, Range range) {
    return number(column, range, NOT_SAID);
  }

  /** A whole number, or that other one if left out. */
  int number(String column, Range range, int otherwise) {
    return one(column, range::find, () -> say("Write a whole number %s.", range)).orElse(otherwise);
  }

  /** An angle from minus that bound to plus it, in degrees; not a number if left out. */
  double degrees(String column, int bound) {
    return one(
            column,
            text -> degrees(text).filter(d -> Math.abs(d) <= bound),
            () -> say("Write degrees with a decimal point, from -%d to %d.", bound, bound))
        .orElse(Double.NaN);
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

  /** A day of every year or of leap years, as in 09-19; empty if left out. */
  String monthAndDay(String column) {
    return one(column, Cells::dayOfTheYear, () -> say("Write month and day, for example 09-19."))
        .orElse("");
  }

  /** A time of day by the 24-hour clock; midnight if left out. */
  LocalTime time(String column) {
    return one(column, Cells::clock, Cells::clockWanted).orElse(LocalTime.MIDNIGHT);
  }

  /** Such times between bars; none if left out. */
  List<LocalTime> times(String column) {
    return all(column, Cells::clock, Cells::clockWanted);
  }

  /**
   * What the whole cell is read as; empty if left out.
   *
   * @param wanted a sentence on what may stand there, which is put together only if it is needed
   */
  <T> Optional<T> one(
      String column, Function<String, Optional<T>> reader, Supplier<String> wanted) {
    if (!has(column)) {
      return Optional.empty();
    }
    Optional<T> found = reader.apply(text(column));
    if (found.isEmpty()) {
      refuse(column, wanted.get());
    }
    return found;
  }

  /** What the different values between bars are read as; none if left out. */
  <T> List<T> all(String column, Function<String, Optional<T>> reader, Supplier<String> wanted) {
    if (!has(column)) {
      return List.of();
    }
    List<Optional<T>> found =
        Arrays.stream(text(column).split("\\|"))
            .map(String::strip)
            .filter(value -> !value.isEmpty())
            .map(reader)
            .toList();
    boolean holdsBarsOnly = found.isEmpty();
    if (holdsBarsOnly || found.stream().anyMatch(Optional::isEmpty)) {
      refuse(column, wanted.get());
    }
    return found.stream().flatMap(Optional::stream).distinct().toList();
  }

  /** Remembers that the cell is bad; the sentence says what may stand there. */
  void refuse(String column, String wanted) {
    bad.add(BadLine.of(line.number(), column, text(column), wanted));
  }

  /** The line built from these cells, or what is wrong with them. */
  <T> Reading<T> reading(Supplier<T> built) {
    return bad.isEmpty() ? Reading.of(built.get()) : Reading.bad(bad);
  }

  private static Optional<Double> degrees(String text) {
    return Optional.of(text)
        .filter(written -> written.matches("[+-]?\\d{1,3}(\\.\\d{1,15})?"))
        .map(Double::valueOf);
  }

  private static Optional<String> dayOfTheYear(String text) {
    try {
      MonthDay.parse("--" + text);
      return Optional.of(text);
    } catch (DateTimeException noMonthAndDay) {
      return Optional.empty();
    }
  }

  private static String clockWanted() {
    return say("Write hours and minutes from 00:00 to 23:59, for example 18:30.");
  }

  private static Optional<LocalTime> clock(String text) {
    try {
      return Optional.of(LocalTime.parse(text, CLOCK));
    } catch (DateTimeException noTime) {
      return Optional.empty();
    }
  }
}
