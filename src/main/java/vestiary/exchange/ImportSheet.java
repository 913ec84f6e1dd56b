package vestiary.exchange;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
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

  private static final List<Kind> KINDS =
      Arrays.stream(ImportWhat.values()).map(ImportSheet::kind).toList();

  private ImportSheet() {}

  /** The page, as it stands before a list is sent or after one was refused as such. */
  static ImportView view(Frame frame, Entries entries, String problem, List<ImportView.Done> done) {
    return new ImportView(
        frame, entries.choice("what", lists()), entries.error("file"), problem, done, KINDS);
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
            .map(bad -> new Line(bad.line(), bad.column(), bad.reason(), text(texts, bad.line())))
            .toList());
  }

  private static Stream<Choice.Option> lists() {
    return Stream.concat(
        Arrays.stream(ImportWhat.values())
            .map(what -> Choice.Option.of(what.id(), ImportWords.name(what))),
        Stream.of(Choice.Option.of(ImportWords.CALENDAR, ImportWords.title(ImportWords.CALENDAR))));
  }

  private static Kind kind(ImportWhat what) {
    List<CsvLine> lines = CsvTable.parse(Demo.file(what), what).lines();
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
                        column.meaning(),
                        example(column.name(), what, lines)))
            .toList());
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
