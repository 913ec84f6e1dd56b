package vestiary.remedy;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import vestiary.acceptance.AcceptSteps;
import vestiary.pool.AddPlanned;
import vestiary.pool.Planned;
import vestiary.pool.ReleaseHeld;
import vestiary.schedule.AdjustMass;

/** Does what a remedy changes, and puts it back, each in the present transaction. */
@ApplicationScoped
class DoDeed {

  private final AdjustMass masses;
  private final AddPlanned planned;
  private final ReleaseHeld held;
  private final AcceptSteps steps;

  DoDeed(AdjustMass masses, AddPlanned planned, ReleaseHeld held, AcceptSteps steps) {
    this.masses = masses;
    this.planned = planned;
    this.held = held;
    this.steps = steps;
  }

  @Transactional(Transactional.TxType.MANDATORY)
  void perform(Deed deed) {
    deed.moves().forEach(move -> masses.change(move.before(), move.after()));
    planned.remove(new Planned(deed.dropped(), List.of()));
    held.release(deed.released());
    steps.accept(deed.accepted());
    planned.add(deed.added());
  }

  @Transactional(Transactional.TxType.MANDATORY)
  void putBack(Deed deed) {
    deed.moves().forEach(move -> masses.change(move.after(), move.before()));
    planned.remove(deed.added());
    steps.withdraw(deed.accepted());
    held.restore(deed.released());
    planned.add(new Planned(deed.dropped(), List.of()));
  }
}
