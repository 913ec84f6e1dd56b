package vestiary.sending;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.pool.Standing;
import vestiary.problem.Asked;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;

/** Reads where something is to go, and finds for what. */
@ApplicationScoped
class ReadDestination {

  private static final int LONGEST = 200;

  private final ReadCluster cluster;
  private final ReadMasses masses;
  private final Clock clock;

  ReadDestination(ReadCluster cluster, ReadMasses masses, Clock clock) {
    this.cluster = cluster;
    this.masses = masses;
    this.clock = clock;
  }

  /** A church of the cluster, a Mass, or somebody outside; what is none is noted as a fault. */
  Destination read(SendOut.Request request, Asked asked) {
    String church = asked.text("church", request.church(), LONGEST);
    String whom = asked.text("whom", request.whom(), LONGEST);
    String mass = asked.text("mass", request.mass(), LONGEST);
    if (!mass.isEmpty()) {
      DatedMass found = masses.get(mass);
      boolean elsewhere = !church.isEmpty() && !church.equals(found.church().slug());
      if (elsewhere || !whom.isEmpty()) {
        asked.fault("church", say("That Mass is at %s.", found.church().name()));
      }
      if (!found.end().toInstant().isAfter(clock.instant())) {
        asked.fault("mass", say("That Mass is over already."));
      }
      return new Destination(List.of(found.church()), "", List.of(found));
    }
    if (church.isEmpty() == whom.isEmpty()) {
      asked.fault("church", say("Say to which church it goes, or to whom outside the cluster."));
      return new Destination(List.of(), whom, List.of());
    }
    Optional<Church> found = cluster.findChurch(church);
    if (!church.isEmpty() && found.isEmpty()) {
      asked.fault("church", say("There is no church \"%s\" in this cluster.", church));
    }
    return new Destination(found.stream().toList(), whom, List.of());
  }

  /**
   * For the Mass that the pieces are planned or held for there, and that begins while they are
   * there; as it was where there is none, one was named, or they leave the cluster.
   *
   * @param ahead what takes the pieces in the time ahead, by start
   * @param last when they are to be back at the latest
   */
  Destination becoming(Destination to, List<Standing> ahead, Instant last) {
    if (!to.masses().isEmpty() || to.churches().isEmpty()) {
      return to;
    }
    return ahead.stream()
        .filter(one -> one.state() == Standing.State.HELD || one.state() == Standing.State.PLANNED)
        .filter(one -> to.churchIds().containsAll(one.churches()) && !one.masses().isEmpty())
        .filter(one -> one.from().isBefore(last))
        .findFirst()
        .map(one -> masses.get(one.masses().get(0).value().toString()))
        .map(mass -> new Destination(to.churches(), to.whom(), List.of(mass)))
        .orElse(to);
  }
}
