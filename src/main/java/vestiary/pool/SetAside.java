package vestiary.pool;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.util.List;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;

/**
 * A piece that somebody holds for a Mass, or that is out. No plan touches it.
 *
 * @param piece its code
 * @param churches where it is meanwhile, or none if it is outside the cluster
 * @param masses the Mass it is for, or none if nobody said
 * @param until half-open end; {@link Instant#MAX} until it is brought back
 * @param word {@code held} or {@code out}
 */
public record SetAside(
    String piece,
    List<ChurchId> churches,
    List<MassId> masses,
    Instant from,
    Instant until,
    String word) {

  public SetAside {
    churches = List.copyOf(churches);
    masses = List.copyOf(masses);
  }

  /** Whether it is known where it is meanwhile, for what, and until when. */
  public boolean isForMass() {
    return !masses.isEmpty() && !churches.isEmpty() && until.isBefore(Instant.MAX);
  }

  /** As what keeps the piece from everything else. */
  public Away toAway() {
    boolean overdue = word.equals(OccupationRow.OUT) && until.equals(Instant.MAX);
    return new Away(from, until, overdue ? say("out and overdue") : word);
  }
}
