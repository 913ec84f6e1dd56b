package vestiary.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Optional;
import vestiary.calendar.Term;
import vestiary.web.Entries;

/** Reads what somebody answered about the file that they sent. */
@ApplicationScoped
class AskedOfFile {

  private final ImportRows rows;
  private final SendList sent;
  private final ColumnsSheet columns;
  private final CalendarSheet calendar;

  AskedOfFile(ImportRows rows, SendList sent, ColumnsSheet columns, CalendarSheet calendar) {
    this.rows = rows;
    this.sent = sent;
    this.columns = columns;
    this.calendar = calendar;
  }

  /**
   * What was chosen.
   *
   * @throws vestiary.problem.Refused if the file is another's or forgotten, or an answer is missing
   */
  @Transactional
  ChosenColumns chosen(String id, Entries typed) {
    ImportRow row = rows.get(id);
    ImportFileRow file = sent.mine(row);
    Optional<ImportWhat> what = Term.find(ImportWhat.class, row.what);
    return what.isPresent() ? columns.read(what.get(), file, typed) : calendar.read(typed);
  }
}
