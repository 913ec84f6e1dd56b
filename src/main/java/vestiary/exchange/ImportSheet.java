package vestiary.exchange;

import static vestiary.web.Speech.say;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.calendar.Term;
import vestiary.exchange.ImportView.Kind;
import vestiary.exchange.ImportView.Line;
import vestiary.exchange.ImportView.Result;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Frame;

/** Sets out the page that lists are sent from. */
final class ImportSheet {

  private static final int LONGEST_SHOWN = 120;

  /** In the demo's own lists these hold words instead of dates. */
  private static final Set<String> DATES = Set.of("date", "from", "to", "due");

  private static final String A_DATE = "2026-12-08";

  /** By list and column; read once, since they never change. */
  private static final Map<ImportWhat, Map<String, String>> EXAMPLES =
      Arrays.stream(ImportWhat.values())
          .collect(Collectors.toMap(Function.identity(), ImportSheet::examples));

  private ImportSheet() {}

  /** The page, as it stands before a list is sent or after one was refused as such. */
  static ImportView view(Frame frame, Entries entries, String problem, List<ImportView.Done> done) {
    return new ImportView(
        frame, entries.choice("what", lists()), entries.error("file"), problem, done, kinds());
  }

  /**
   * What came of a list.
   *
   * @param shown those of its bad lines that are shown
   * @param texts the physical lines of the file; none if it is not kept any more
   */
  static Result result(ImportRow row, List<BadLine> shown, List<String> texts) {
    boolean isDone = row.state() == ImportState.DONE;
    boolean isCalendar = row.what.equals(ImportWords.CALENDAR);
    return new Result(
        isCalendar
            ? ImportWords.calendarSentence(row.result, row.trial, isDone)
            : ImportWords.sentence(row.result, row.trial, isDone),
        isCalendar ? ImportWords.calendarCounts(row.result) : ImportWords.counts(row.result),
        shown.stream()
            .map(
                bad ->
                    new Line(
                        bad.line(),
                        heading(row.what, bad.column()),
                        bad.reason(),
                        text(texts, bad.line())))
            .toList());
  }

  /** What a column of ours holds; what is none, as the title of an event, stays. */
  private static String heading(String what, String column) {
    return Term.find(ImportWhat.class, what).stream()
        .flatMap(list -> list.columns().stream())
        .filter(one -> one.name().equals(column))
        .map(Column::heading)
        .findFirst()
        .orElse(column);
  }

  private static Stream<Choice.Option> lists() {
    return Stream.of(
            Stream.of(Choice.Option.of(WhichList.UNSAID, say("As its columns say"))),
            tables(),
            Stream.of(
                Choice.Option.of(ImportWords.CALENDAR, ImportWords.title(ImportWords.CALENDAR))))
        .flatMap(options -> options);
  }

  /** Every list but the calendar. */
  static Stream<Choice.Option> tables() {
    return Arrays.stream(ImportWhat.values())
        .map(what -> Choice.Option.of(what.id(), ImportWords.name(what)));
  }

  private static List<Kind> kinds() {
    return Arrays.stream(ImportWhat.values()).map(ImportSheet::kind).toList();
  }

  private static Kind kind(ImportWhat what) {
    return new Kind(
        what.id(),
        ImportWords.name(what),
        ImportWords.about(what),
        what.columns().stream()
            .map(
                column ->
                    new ImportView.Column(
                        column.name(),
                        column.required(),
                        say(column.meaning()),
                        EXAMPLES.get(what).get(column.name())))
            .toList());
  }

  private static Map<String, String> examples(ImportWhat what) {
    List<CsvLine> lines = CsvTable.parse(Demo.file(what), what).lines();
    return what.columns().stream()
        .collect(Collectors.toMap(Column::name, column -> example(column.name(), what, lines)));
  }

  /** What the demo's list has there, since that is known to be understood; or nothing. */
  private static String example(String column, ImportWhat what, List<CsvLine> lines) {
    return what.isDated() && DATES.contains(column)
        ? A_DATE
        : lines.stream()
            .map(line -> line.cell(column))
            .filter(cell -> !cell.isEmpty())
            .findFirst()
            .orElse("");
  }

  /** The physical lines; none if the file is no text, which is then said of it as a whole. */
  static List<String> lines(byte[] file) {
    try {
      return CsvText.parseAny(file).text().lines().toList();
    } catch (BadFile noText) {
      return List.of();
    }
  }

  private static String text(List<String> lines, int number) {
    String line = number <= lines.size() ? lines.get(number - 1) : "";
    return line.length() > LONGEST_SHOWN ? line.substring(0, LONGEST_SHOWN) + "…" : line;
  }
}
