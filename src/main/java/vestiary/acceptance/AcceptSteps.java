package vestiary.acceptance;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.List;
import vestiary.vesting.MassId;

/** Accepts lawful substitutes by name, takes that back, and tells what is accepted. */
@ApplicationScoped
public class AcceptSteps {

  private final AcceptedStepRows steps;

  AcceptSteps(AcceptedStepRows steps) {
    this.steps = steps;
  }

  /** Those accepted for these Masses, whether they still answer anything or not. */
  public List<AcceptedStep> of(Collection<MassId> masses) {
    return steps.of(masses).stream().map(AcceptedStepRow::toAcceptedStep).toList();
  }

  /** Accepts in the present transaction; one for the same person and kind gives way. */
  @Transactional(Transactional.TxType.MANDATORY)
  public void accept(List<AcceptedStep> accepted) {
    accepted.forEach(steps::delete);
    accepted.forEach(one -> steps.persist(AcceptedStepRow.of(one)));
    steps.flush();
  }

  /** Takes back in the present transaction; what is not there any more needs no taking back. */
  @Transactional(Transactional.TxType.MANDATORY)
  public void withdraw(List<AcceptedStep> accepted) {
    accepted.forEach(steps::delete);
  }
}
