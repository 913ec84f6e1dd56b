package vestiary.allocation.celebrant;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import vestiary.vesting.MassId;

/**
 * A division of Masses among priests.
 *
 * @param given who celebrates what; a Mass that nobody can take is not in it
 * @param bounds the least each level can be, where those before it are at their values; equal to
 *     the values where proven. After the first that differs they say nothing and are 0
 * @param proven whether no division is better
 * @param wants of the Masses that nobody takes, by start
 */
public record Proposal(
    Map<MassId, PriestId> given, Levels values, Levels bounds, boolean proven, List<Want> wants) {

  public Proposal {
    given = Map.copyOf(given);
    wants = List.copyOf(wants);
  }

  /** Who is to celebrate a Mass; empty if nobody can. */
  public Optional<PriestId> findCelebrant(MassId mass) {
    return Optional.ofNullable(given.get(mass));
  }
}
