package vestiary.pool;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Gives up what somebody has set aside for a Mass, and sets it aside again. */
@ApplicationScoped
public class ReleaseHeld {

  private final OccupationRows occupations;

  ReleaseHeld(OccupationRows occupations) {
    this.occupations = occupations;
  }

  /**
   * Releases in the present transaction.
   *
   * @throws Refused if one of them is not held any more
   */
  @Transactional(Transactional.TxType.MANDATORY)
  public void release(List<SetAside> held) {
    held.forEach(one -> set(one, false));
  }

  /**
   * Sets aside again in the present transaction.
   *
   * @throws Refused if one of the pieces is taken now
   */
  @Transactional(Transactional.TxType.MANDATORY)
  public void restore(List<SetAside> held) {
    held.forEach(one -> set(one, true));
  }

  private void set(SetAside held, boolean standing) {
    boolean free =
        !standing
            || occupations.standingBetween(held.from(), held.until()).stream()
                .noneMatch(found -> found.code().equals(held.piece()));
    if (!free || occupations.setStanding(held, standing) == 0) {
      throw new Refused(
          new Refusal.Taken(
              "",
              standing
                  ? say(
                      "%s is taken for something else by now, so that it cannot be set aside again.",
                      held.piece())
                  : say(
                      "%s is not set aside any more. Nothing was changed; look again.",
                      held.piece())));
    }
  }
}
