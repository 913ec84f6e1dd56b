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

  /** The page, as it stands before a list was sent or after one was refused as such. */
  static ImportView view(Frame frame, Entries entries) {
    return view(frame, entries, Result.NONE);
  }

  static ImportView view(Frame frame, Entries entries, Result result) {
    return new ImportView(
        frame, entries.choice("what", lists()), entries.error("file"), result, KINDS);
  }

  static Result result(ImportCsv.Outcome outcome, byte[] file, boolean isTrial) {
    List<String> lines = lines(file);
    return new Result(
        ImportWords.sentence(outcome, isTrial),
        ImportWords.counts(outcome),
        outcome.bad().stream()
            .map(bad -> new Line(bad.line(), bad.column(), bad.reason(), text(lines, bad.line())))
            .toList());
  }

  private static Stream<Choice.Option> lists() {
    return Arrays.stream(ImportWhat.values())
        .map(what -> Choice.Option.of(what.id(), ImportWords.name(what)));
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
  private static List<String> lines(byte[] file) {
    try {
      return CsvText.parse(file).text().lines().toList();
    } catch (BadFile noText) {
      return List.of();
    }
  }

  private static String text(List<String> lines, int number) {
    String line = number <= lines.size() ? lines.get(number - 1) : "";
    return line.length() > LONGEST_SHOWN ? line.substring(0, LONGEST_SHOWN) + "…" : line;
  }
}
