package vestiary.movement;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.asking.Asking;
import vestiary.asking.AskingState;
import vestiary.asking.ReadAskings;
import vestiary.cluster.Church;
import vestiary.cluster.Cluster;
import vestiary.plan.PlanResult;
import vestiary.plan.ReadMovements;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.ChurchId;

/** The journeys of the plans that hold, each with who was asked for it. */
@ApplicationScoped
class ReadErrands {

  private final ReadMovements movements;
  private final ReadAskings askings;

  ReadErrands(ReadMovements movements, ReadAskings askings) {
    this.movements = movements;
    this.askings = askings;
  }

  /**
   * Some errands.
   *
   * @param dropped who was asked, or said yes, for a trip that no plan has any more
   */
  record Errands(
      Cluster cluster,
      Map<ChurchId, Church> churches,
      List<Errand> errands,
      List<Asking> dropped) {}

  /** Those that arrive on these dates, both included, by the hour of leaving. */
  @Transactional
  Errands between(LocalDate first, LocalDate last) {
    ReadMovements.Journeys found = movements.between(first, last);
    Set<UUID> trips = found.trips().stream().map(PlanResult.Trip::id).collect(Collectors.toSet());
    Map<UUID, List<Asking>> asked =
        askings.ofTrips(trips).stream().collect(Collectors.groupingBy(one -> one.trip().id()));
    return new Errands(
        found.cluster(),
        found.churches(),
        found.trips().stream()
            .map(trip -> new Errand(trip, asked.getOrDefault(trip.id(), List.of())))
            .toList(),
        askings
            .leavingBetween(
                first.atStartOfDay(found.cluster().zone()).toInstant(),
                last.plusDays(1).atStartOfDay(found.cluster().zone()).toInstant())
            .stream()
            .filter(one -> !trips.contains(one.trip().id()))
            .filter(one -> one.state().isOpen() && one.state() != AskingState.DONE)
            .toList());
  }

  /**
   * One, as long as a plan that holds has it; else those who were asked for it once.
   *
   * @throws Refused if there is none of that id, nor ever was
   */
  @Transactional
  Found get(String id) {
    UUID trip = Asked.id("journey", id);
    ReadMovements.Journeys found = movements.together(trip);
    List<Asking> asked = askings.ofTrip(trip);
    if (found.trips().isEmpty() && asked.isEmpty()) {
      throw new Refused(new Refusal.NotThere("journey", id));
    }
    return new Found(
        found.cluster(),
        found.churches(),
        found.trips().stream().map(one -> new Errand(one, asked)).toList(),
        asked);
  }

  /**
   * What is known of one id.
   *
   * @param errands one, or none if no plan has the trip any more
   */
  record Found(
      Cluster cluster, Map<ChurchId, Church> churches, List<Errand> errands, List<Asking> askings) {

    Optional<Errand> findErrand() {
      return errands.stream().findFirst();
    }

    /** The errand, or a refusal that says it is not needed any more. */
    Errand needed() {
      return findErrand()
          .orElseThrow(
              () ->
                  new Refused(
                      new Refusal.Taken(
                          "",
                          say(
                              "The plan has changed, and nothing is to be carried on this journey any more. Nobody need drive."))));
    }
  }
}
