package vestiary.exchange;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import vestiary.calendar.Term;
import vestiary.problem.Refused;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Frame;

/** Sets out the page of one list. */
@ApplicationScoped
@Transactional
class ReadImport {

  /** Lines that could not be brought in, on one page. */
  static final int LINES_A_PAGE = 100;

  private final ImportRows rows;
  private final SendList sent;
  private final UndoImport undo;
  private final KnownNames names;
  private final ColumnsSheet columns;
  private final CalendarSheet calendar;

  ReadImport(
      ImportRows rows,
      SendList sent,
      UndoImport undo,
      KnownNames names,
      ColumnsSheet columns,
      CalendarSheet calendar) {
    this.rows = rows;
    this.sent = sent;
    this.undo = undo;
    this.names = names;
    this.columns = columns;
    this.calendar = calendar;
  }

  /**
   * The page.
   *
   * @param typed what was typed at the form; empty to show what was chosen, or guessed
   * @param page which of the pages of lines, from 1
   * @throws Refused if there is no such list, or it is another's and not brought in
   */
  ImportStepView view(Frame frame, String id, Entries typed, String problem, int page) {
    ImportRow row = rows.get(id);
    Optional<ImportFileRow> file =
        row.state().isOver() ? Optional.empty() : Optional.of(sent.mine(row));
    String address = "/import/" + row.id;
    boolean isTable = Term.find(ImportWhat.class, row.what).isPresent();
    boolean asks = file.isPresent() && !row.state().isAtWork();
    return new ImportStepView(
        frame,
        ImportWords.title(row.what),
        asks && isTable
            ? Entries.empty().with("what", row.what).choice("what", ImportSheet.tables())
            : Choice.of(List.of()),
        !isTable,
        row.fileName,
        address,
        problem.isEmpty() ? say(row.failure) : problem,
        working(row),
        outcome(row, file, address, page),
        asks && isTable
            ? columns.of(what(row), file.get(), names.read(), typed)
            : ImportStepView.Columns.NONE,
        asks && !isTable ? calendar.of(file.get(), typed) : ImportStepView.Calendar.NONE,
        row.state() == ImportState.DONE && undo.isKept(row.id) ? address + "/undo" : "");
  }

  /** How far a list is. */
  ImportRow get(String id) {
    ImportRow row = rows.get(id);
    if (!row.state().isOver()) {
      sent.mine(row);
    }
    return row;
  }

  private static ImportWhat what(ImportRow row) {
    return Term.find(ImportWhat.class, row.what).orElseThrow();
  }

  private static ImportStepView.Working working(ImportRow row) {
    if (!row.state().isAtWork()) {
      return ImportStepView.Working.NONE;
    }
    int all = row.trial ? row.lines : 2 * row.lines;
    int done = Math.min(row.progress, all);
    String sentence =
        row.state() == ImportState.WAITING
            ? say("It waits for its turn.")
            : say(
                row.trial
                    ? word("Trying %,d lines: %d percent done.")
                    : word("Bringing in %,d lines: %d percent done."),
                row.lines,
                done * 100 / Math.max(1, all));
    return new ImportStepView.Working(sentence, done, Math.max(1, all));
  }

  private ImportStepView.Outcome outcome(
      ImportRow row, Optional<ImportFileRow> file, String address, int page) {
    if (row.state() == ImportState.UNDONE) {
      return new ImportStepView.Outcome(
          new ImportView.Result(
              say("It was undone: all is as it was before."), List.of(), List.of()),
          List.of(),
          "",
          "",
          "");
    }
    if (row.result == null || row.state().isAtWork()) {
      return ImportStepView.Outcome.NONE;
    }
    List<BadLine> bad = row.result.bad();
    int pages = Math.max(1, (bad.size() + LINES_A_PAGE - 1) / LINES_A_PAGE);
    int here = Math.min(Math.max(page, 1), pages);
    int first = (here - 1) * LINES_A_PAGE;
    int last = Math.min(first + LINES_A_PAGE, bad.size());
    boolean isCalendar = row.what.equals(ImportWords.CALENDAR);
    List<String> texts =
        file.filter(one -> !isCalendar).map(one -> ImportSheet.lines(one.body)).orElse(List.of());
    return new ImportStepView.Outcome(
        ImportSheet.result(row, bad.subList(first, last), texts),
        row.result.found().stream().limit(LINES_A_PAGE).toList(),
        pages == 1 ? "" : say("%,d to %,d of %,d", first + 1, last, bad.size()),
        here == 1 ? "" : address + "?page=" + (here - 1),
        here == pages ? "" : address + "?page=" + (here + 1));
  }
}
