package vestiary.allocation.celebrant;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import vestiary.allocation.Journeys;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;

/**
 * Everything that decides who celebrates which Mass.
 *
 * @param priests among whom the Masses are divided, in the order of their ids
 * @param masses to be divided, by start
 * @param engagements of these priests, by start; the same Mass is never among the Masses to divide
 * @param far how long a journey from home makes a Mass a far one
 */
public record Question(
    List<Priest> priests,
    List<MassToServe> masses,
    List<Engagement> engagements,
    Journeys journeys,
    Pace pace,
    Duration far) {

  public Question {
    priests = priests.stream().sorted(Comparator.comparing(Priest::id)).toList();
    masses = masses.stream().sorted(MassToServe.BY_START).toList();
    engagements =
        engagements.stream()
            .sorted(
                Comparator.comparing((Engagement one) -> one.stay().start())
                    .thenComparing(one -> one.stay().mass())
                    .thenComparing(Engagement::priest))
            .toList();
    Objects.requireNonNull(journeys, "journeys");
    Objects.requireNonNull(pace, "pace");
  }

  /** The same with other Masses to divide. */
  public Question withMasses(List<MassToServe> others) {
    return new Question(priests, others, engagements, journeys, pace, far);
  }

  /** Whoever has that id; empty if he is none of these priests. */
  public Optional<Priest> find(PriestId id) {
    return priests.stream().filter(priest -> priest.id().equals(id)).findFirst();
  }

  /** The Mass of that id; empty if it is none of those to divide. */
  public Optional<MassToServe> find(MassId id) {
    return masses.stream().filter(mass -> mass.id().equals(id)).findFirst();
  }

  /** The engagements of one priest, by start. */
  List<Engagement> engagements(Priest priest) {
    return engagements.stream().filter(one -> one.priest().equals(priest.id())).toList();
  }

  /** How much a Mass asks of a priest: 1 if it is early or far from his home, 2 if both, else 0. */
  public int burden(Priest priest, MassToServe mass) {
    return (mass.early() ? 1 : 0) + (isFar(priest, mass.stay().church()) ? 1 : 0);
  }

  /** Whether a church is far from a priest's home; none is if his home is not known. */
  public boolean isFar(Priest priest, ChurchId church) {
    return priest
        .findHome()
        .flatMap(home -> journeys.find(home, church))
        .filter(way -> way.compareTo(far) >= 0)
        .isPresent();
  }
}
