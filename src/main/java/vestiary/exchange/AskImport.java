package vestiary.exchange;

import static vestiary.web.Speech.word;

import com.github.kagkarlsson.scheduler.task.TaskInstance;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.util.Locale;
import java.util.UUID;
import vestiary.access.CurrentCluster;
import vestiary.plan.Errands;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Speech;

/** Has a kept file tried or brought in: a short one at once, a long one as a job. */
@ApplicationScoped
class AskImport {

  /** Lines that are worked through while somebody waits for a page. */
  static final int SHORT = 500;

  private final ImportRows rows;
  private final SendList sent;
  private final BringIn bringIn;
  private final Errands errands;
  private final CurrentCluster current;

  AskImport(
      ImportRows rows, SendList sent, BringIn bringIn, Errands errands, CurrentCluster current) {
    this.rows = rows;
    this.sent = sent;
    this.bringIn = bringIn;
    this.errands = errands;
    this.current = current;
  }

  /**
   * Asks for it.
   *
   * @throws Refused if the file is another's or forgotten, or it is at work or brought in already
   */
  @Transactional
  void ask(String id, ChosenColumns chosen, boolean trial) {
    ImportRow row = rows.getLocked(id);
    ImportFileRow file = sent.mine(row);
    if (row.state().isAtWork() || row.state().isOver()) {
      throw new Refused(new Refusal.Outdated("this list"));
    }
    file.chosen = chosen;
    row.trial = trial;
    row.starts = 0;
    row.progress = 0;
    row.cancelled = false;
    row.failure = "";
    row.language = Speech.localeOr(Locale.ENGLISH).toLanguageTag();
    row.become(ImportState.WAITING);
    rows.flush();
    if (row.lines <= SHORT) {
      bringIn.run(id, ImportCsv.Steps.UNTOLD);
    } else {
      errands.enter(
          new TaskInstance<>(
              ImportJobs.BRING_IN, id + "." + UUID.randomUUID(), current.id() + " " + id));
    }
  }

  /** Has the queue look for it, once it can be seen. */
  void look() {
    errands.look();
  }

  /** Waits until it is over, or the time is. */
  void await(String id, Duration longest) {
    errands.await(
        () -> QuarkusTransaction.requiringNew().call(() -> rows.get(id).state()),
        state -> !state.isAtWork(),
        longest);
  }

  /** Stops it before its next step; what is over stays. */
  @Transactional
  void cancel(String id) {
    ImportRow row = rows.getLocked(id);
    if (!sent.isMine(row)) {
      throw new Refused(new Refusal.NotThere("import", id));
    }
    if (row.state() == ImportState.WAITING) {
      row.become(ImportState.FAILED);
      row.failure = word("It was stopped; nothing was changed.");
    } else if (row.state() == ImportState.RUNNING) {
      row.cancelled = true;
    }
  }
}
