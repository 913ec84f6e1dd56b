package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.util.Optional;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.MassId;

/** Something was entered for one Mass alone, so that its pattern leaves it as it is. */
@ApplicationScoped
public class TouchMass {

  private final MassRows masses;

  TouchMass(MassRows masses) {
    this.masses = masses;
  }

  /**
   * Keeps it as it is until the end of the present transaction, so that two who enter something do
   * so one after the other.
   *
   * @throws Refused if there is no such Mass, or it is cancelled
   */
  @Transactional(Transactional.TxType.MANDATORY)
  public void touch(MassId mass) {
    locked(mass).touched = true;
  }

  /** The same without a sign that something was entered. */
  MassRow locked(MassId mass) {
    return Optional.ofNullable(masses.findById(mass.value(), LockModeType.PESSIMISTIC_WRITE))
        .filter(row -> !row.cancelled)
        .orElseThrow(() -> new Refused(new Refusal.NotThere("Mass", mass.value().toString())));
  }
}
