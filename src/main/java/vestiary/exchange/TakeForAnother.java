package vestiary.exchange;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import vestiary.calendar.Term;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Takes a kept file for another list than it was taken for at first. */
@ApplicationScoped
class TakeForAnother {

  private final ImportRows rows;
  private final SendList sent;

  TakeForAnother(ImportRows rows, SendList sent) {
    this.rows = rows;
    this.sent = sent;
  }

  /**
   * Forgets which column holds what, and what came of trying it.
   *
   * @throws Refused if the file is another's or forgotten, is at work, brought in or a calendar, or
   *     there is no such list
   */
  @Transactional
  void take(String id, String what) {
    ImportRow row = rows.getLocked(id);
    ImportFileRow file = sent.mine(row);
    boolean isCalendar = row.what.equals(ImportWords.CALENDAR);
    if (isCalendar || row.state().isAtWork() || row.state().isOver()) {
      throw new Refused(new Refusal.Outdated("this list"));
    }
    ImportWhat other =
        Term.find(ImportWhat.class, what)
            .orElseThrow(
                () -> new Refused(Refusal.Unfit.of("what", say("Choose what is in the list."))));
    file.chosen = null;
    row.what = other.id();
    row.result = null;
    row.failure = "";
    row.become(ImportState.SENT);
  }
}
