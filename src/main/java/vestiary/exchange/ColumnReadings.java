package vestiary.exchange;

import static vestiary.web.Speech.say;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import vestiary.calendar.Celebration;
import vestiary.web.Entries;
import vestiary.web.Speech;

/** Says of columns what is read out of them where that does not go without saying. */
final class ColumnReadings {

  private static final int SHOWN = 12;

  private final RawTable table;
  private final TidyCells tidy;
  private final Entries shown;

  private ColumnReadings(RawTable table, TidyCells tidy, Entries shown) {
    this.table = table;
    this.tidy = tidy;
    this.shown = shown;
  }

  /** Whole sentences; none where nothing is to be said. */
  static List<String> of(ImportWhat what, RawTable table, TidyCells tidy, Entries shown) {
    ColumnReadings readings = new ColumnReadings(table, tidy, shown);
    return switch (what) {
      case MASSES -> readings.dayAndTime().toList();
      case CHURCHES -> Stream.concat(readings.titles(), readings.titleUnsaid()).toList();
      default -> List.of();
    };
  }

  private Stream<String> dayAndTime() {
    Optional<Integer> day = place(DayAndTime.DATE);
    return day.isPresent() && day.equals(place(DayAndTime.TIME))
        ? Stream.of(
            say("One column of your file holds the day and the time. Each is read from it."))
        : Stream.empty();
  }

  /** Which celebrations are read out of words. */
  private Stream<String> titles() {
    List<String> names =
        place(ChurchLine.TITULAR).stream()
            .flatMap(this::words)
            .flatMap(cell -> tidy.findTitle(cell).stream())
            .map(ColumnReadings::name)
            .distinct()
            .limit(SHOWN)
            .toList();
    return names.isEmpty()
        ? Stream.empty()
        : Stream.of(say("As the days of the titles these are read: %s.", String.join("; ", names)));
  }

  /** That a column is called so, and why nothing is read out of it. */
  private Stream<String> titleUnsaid() {
    if (place(ChurchLine.TITULAR).isPresent()) {
      return Stream.empty();
    }
    List<String> unknown =
        IntStream.range(0, table.header().size())
            .filter(place -> table.header().get(place).equalsIgnoreCase(ChurchLine.TITULAR))
            .boxed()
            .flatMap(this::words)
            .filter(cell -> tidy.findTitle(cell).isEmpty())
            .map(ColumnsOfFile::shortened)
            .limit(SHOWN)
            .toList();
    return unknown.isEmpty()
        ? Stream.empty()
        : Stream.of(
            say(
                "The calendar does not tell for certain which celebration is meant by %s; choose the day of each title on the page of its church, once the list is in.",
                Speech.list(unknown)));
  }

  /** Each cell of a column once that holds no id. */
  private Stream<String> words(int place) {
    return table.lines().stream()
        .map(line -> line.cell(place))
        .filter(cell -> !cell.isEmpty() && !TidyCells.isId(cell))
        .distinct();
  }

  private static String name(Celebration celebration) {
    return celebration.name().in(Speech.localeOr(Locale.ENGLISH));
  }

  private Optional<Integer> place(String column) {
    return Optional.of(shown.text(ColumnsSheet.PLACE + column))
        .filter(place -> place.matches("\\d{1,3}"))
        .map(Integer::valueOf)
        .filter(place -> place < table.header().size());
  }
}
