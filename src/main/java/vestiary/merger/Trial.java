package vestiary.merger;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.SystemException;
import jakarta.transaction.TransactionManager;
import jakarta.transaction.Transactional;
import java.util.Objects;
import vestiary.problem.Asked;

/** Does something in full and takes it back where it was only to be tried. */
@ApplicationScoped
class Trial {

  private final TransactionManager transactions;

  Trial(TransactionManager transactions) {
    this.transactions = transactions;
  }

  /** What is done with what a program asks for. */
  interface Deed<B, T> {

    /**
     * @param isDone false if it is to be taken back
     */
    T of(B asked, boolean isDone);
  }

  /**
   * Refused as if it were done in earnest; nothing is changed on a trial.
   *
   * @param dryRun as the address has it; {@code null} for none
   * @throws vestiary.problem.Refused also if that is neither true nor false, or nothing was sent
   */
  @Transactional
  <B, T> T run(String dryRun, B sent, Deed<B, T> deed) {
    B asked = Asked.body(sent);
    boolean isTrial = isAsked(dryRun);
    T answer = deed.of(asked, !isTrial);
    if (isTrial) {
      takeBack();
    }
    return answer;
  }

  private static boolean isAsked(String dryRun) {
    Asked asked = new Asked();
    String text = asked.text("dryRun", Objects.toString(dryRun, ""));
    if (!text.isEmpty() && !text.equals("true") && !text.equals("false")) {
      asked.fault("dryRun", say("dryRun \"%s\" is not known; it can be true, false.", text));
    }
    asked.refuseIfFaulty();
    return text.equals("true");
  }

  private void takeBack() {
    try {
      transactions.setRollbackOnly();
    } catch (SystemException e) {
      throw new IllegalStateException(e);
    }
  }
}
