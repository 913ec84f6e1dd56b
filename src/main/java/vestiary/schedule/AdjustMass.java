package vestiary.schedule;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.transaction.Transactional;
import java.util.Optional;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Changes the little of a Mass by which a clash is mended, and puts it back. */
@ApplicationScoped
public class AdjustMass {

  private final MassRows masses;
  private final ReadMasses read;
  private final Event<MassMoved> moved;

  AdjustMass(MassRows masses, ReadMasses read, Event<MassMoved> moved) {
    this.moved = moved;
    this.masses = masses;
    this.read = read;
  }

  /**
   * From one state to another in the present transaction. A Mass that a pattern yielded is left
   * alone by it from then on.
   *
   * @throws Refused if the Mass is cancelled, gone, or not as it was expected to be
   */
  @Transactional(Transactional.TxType.MANDATORY)
  public void change(MassState expected, MassState then) {
    MassRow row =
        Optional.ofNullable(masses.findById(expected.mass().value()))
            .filter(found -> !found.cancelled)
            .orElseThrow(AdjustMass::changed);
    if (!MassState.of(read.get(row.id.toString())).equals(expected)) {
      throw changed();
    }
    row.starts = then.start();
    row.brings = then.brings();
    row.colour = then.colour();
    row.touched = true;
    masses.flush();
    if (!then.start().equals(expected.start())) {
      moved.fire(new MassMoved(then.mass(), false));
    }
  }

  private static Refused changed() {
    return new Refused(
        new Refusal.Taken(
            "",
            say(
                "The Mass was changed or cancelled by somebody meanwhile. Nothing was changed now; look at the Mass.")));
  }
}
