package vestiary.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import vestiary.calendar.Term;
import vestiary.cluster.Horizon;

/** Tries a list or brings it in, and keeps what it changes so that it can be undone. */
@ApplicationScoped
class BringIn {

  private final ImportRows rows;
  private final ImportFileRows files;
  private final ImportCsv lists;
  private final ImportCalendar calendars;
  private final KnownNames names;
  private final Horizon horizon;
  private final ImportChanges changes;
  private final Clock clock;

  BringIn(
      ImportRows rows,
      ImportFileRows files,
      ImportCsv lists,
      ImportCalendar calendars,
      KnownNames names,
      Horizon horizon,
      ImportChanges changes,
      Clock clock) {
    this.rows = rows;
    this.files = files;
    this.lists = lists;
    this.calendars = calendars;
    this.names = names;
    this.horizon = horizon;
    this.changes = changes;
    this.clock = clock;
  }

  /** Does with a kept file what was chosen. */
  @Transactional
  void run(String id, ImportCsv.Steps steps) {
    ImportRow before = rows.get(id);
    ImportFileRow file = files.findById(before.id);
    boolean trial = before.trial;
    if (!trial) {
      changes.keepFor(before.id);
    }
    ImportResult result;
    boolean isDone;
    try {
      if (before.what.equals(ImportWords.CALENDAR)) {
        ImportCalendar.Outcome outcome =
            calendars.bringIn(file.body, CalendarSpan.of(file.chosen), trial, steps);
        result = ImportResult.of(outcome);
        isDone = outcome.outcome().done();
      } else {
        ImportCsv.Outcome outcome = bringIn(before, file, trial, steps);
        result = ImportResult.of(outcome);
        isDone = outcome.done();
      }
    } catch (BadFile bad) {
      throw bad.refused();
    }
    // How far it is was written beside this transaction.
    ImportRow row = rows.getLocked(id);
    rows.getEntityManager().refresh(row);
    row.result = result;
    row.progress = row.lines;
    if (isDone) {
      changes.settle(row.id);
      done(row);
      files.delete(file);
    } else {
      row.become(trial ? ImportState.TRIED : ImportState.REFUSED);
    }
  }

  /**
   * Brings in a list that needs no choosing, at once.
   *
   * @param row entered in this transaction; removed again if nothing came of it
   */
  @Transactional
  ImportCsv.Outcome now(ImportRow row, ImportWhat what, CsvTable table) {
    row.trial = false;
    changes.keepFor(row.id);
    ImportCsv.Outcome outcome =
        lists.bringIn(what, table, DateWords.ISO, false, ImportCsv.Steps.UNTOLD);
    row.result = ImportResult.of(outcome);
    if (outcome.done() && changes.settle(row.id) > 0) {
      done(row);
    } else {
      rows.delete(row);
    }
    return outcome;
  }

  private ImportCsv.Outcome bringIn(
      ImportRow row, ImportFileRow file, boolean trial, ImportCsv.Steps steps) {
    ImportWhat what = Term.find(ImportWhat.class, row.what).orElseThrow();
    CsvTable table;
    try {
      table = file.chosen.table(what, RawTable.parse(CsvText.parseAny(file.body)), names.read());
    } catch (BadFile bad) {
      throw bad.refused();
    }
    return lists.bringIn(what, table, DateWords.ISO, trial, steps);
  }

  private void done(ImportRow row) {
    row.become(ImportState.DONE);
    row.doneAt = clock.instant();
    row.reached = horizon.date();
  }
}
