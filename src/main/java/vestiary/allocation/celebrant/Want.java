package vestiary.allocation.celebrant;

import java.util.List;
import java.util.Objects;
import vestiary.vesting.MassId;

/**
 * A Mass that nobody takes, and why no other division would serve it without leaving another.
 *
 * @param masses of which at least one stays without a celebrant however they are divided, the Mass
 *     itself among them, by start; the Mass alone if no priest could take it even if he had no
 *     other
 * @param most for each priest who could take any of these, how many of them he could take
 * @param ground what shows it
 */
public record Want(MassId mass, List<MassId> masses, List<Most> most, Ground ground) {

  public Want {
    Objects.requireNonNull(mass, "mass");
    Objects.requireNonNull(ground, "ground");
    masses = List.copyOf(masses);
    most = List.copyOf(most);
  }

  /** How many of the Masses one priest could take at most. */
  public record Most(PriestId priest, int masses) {}

  /** What shows it. */
  public enum Ground {
    /** What the priests could take adds up to fewer than the Masses are (as in Hall's theorem). */
    COUNTED,
    /** All ways of dividing the Masses were tried, one after another. */
    TRIED,
    /** The search over all divisions found no better one; no short proof is known. */
    SEARCHED
  }
}
