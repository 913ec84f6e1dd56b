package vestiary.merger;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.SystemException;
import jakarta.transaction.TransactionManager;
import jakarta.transaction.Transactional;
import java.util.Objects;
import java.util.function.Supplier;
import vestiary.problem.Asked;

/** Does something in full and takes it back where it was only to be tried. */
@ApplicationScoped
class Trial {

  private final TransactionManager transactions;

  Trial(TransactionManager transactions) {
    this.transactions = transactions;
  }

  /**
   * Whether that is asked for.
   *
   * @throws vestiary.problem.Refused if it is neither true nor false
   */
  static boolean isAsked(String dryRun) {
    Asked asked = new Asked();
    String text = asked.text("dryRun", Objects.toString(dryRun, ""));
    if (!text.isEmpty() && !text.equals("true") && !text.equals("false")) {
      asked.fault("dryRun", say("dryRun \"%s\" is not known; it can be true, false.", text));
    }
    asked.refuseIfFaulty();
    return text.equals("true");
  }

  /** Refused as if it were done in earnest; nothing is changed on a trial. */
  @Transactional
  <T> T run(boolean isTrial, Supplier<T> deed) {
    T answer = deed.get();
    if (isTrial) {
      takeBack();
    }
    return answer;
  }

  private void takeBack() {
    try {
      transactions.setRollbackOnly();
    } catch (SystemException e) {
      throw new IllegalStateException(e);
    }
  }
}
