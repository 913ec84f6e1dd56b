package vestiary.allocation.planner;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import vestiary.allocation.flow.Chain;
import vestiary.allocation.flow.FlowModel;
import vestiary.allocation.flow.Item;
import vestiary.allocation.flow.Roads;
import vestiary.allocation.flow.Trip;
import vestiary.allocation.plan.Movement;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.Piece;

/** The trips of all items as movements: what goes on one trip goes together. */
final class Journeying {

  private record Load(Item item, long ready, long due) {}

  private final FlowModel model;
  private final Roads roads;
  private final Situation situation;
  private final Map<Integer, List<Load>> loads = new TreeMap<>();

  Journeying(FlowModel model, Roads roads, Situation situation) {
    this.model = model;
    this.roads = roads;
    this.situation = situation;
  }

  /** By hour of leaving, then churches. */
  List<Movement> of(List<Itinerary> itineraries) {
    itineraries.forEach(this::load);
    return loads.entrySet().stream()
        .map(e -> movement(model.trip(e.getKey()), e.getValue()))
        .sorted(
            Comparator.comparing(Movement::leaveBy)
                .thenComparing(Movement::from)
                .thenComparing(Movement::to))
        .toList();
  }

  private void load(Itinerary itinerary) {
    long ready = itinerary.after().cleared();
    List<Chain.Leg> legs = itinerary.legs();
    for (int at = 0; at < legs.size(); at++) {
      Chain.Leg leg = legs.get(at);
      if (leg.isMass()) {
        ready = model.slot(leg.slot()).visit().cleared();
      } else {
        Trip trip = model.trip(leg.trip());
        loads
            .computeIfAbsent(leg.trip(), unknown -> new ArrayList<>())
            .add(new Load(itinerary.item(), ready, due(itinerary, at + 1)));
        ready = trip.due();
      }
    }
  }

  private long due(Itinerary itinerary, int next) {
    if (next == itinerary.legs().size()) {
      return itinerary.due().get(0).setOut();
    }
    Chain.Leg leg = itinerary.legs().get(next);
    return leg.isMass() ? model.slot(leg.slot()).visit().setOut() : model.trip(leg.trip()).ready();
  }

  private Movement movement(Trip trip, List<Load> loads) {
    long ready = loads.stream().mapToLong(Load::ready).max().orElseThrow();
    long due = loads.stream().mapToLong(Load::due).min().orElseThrow();
    long time = roads.between(trip.from(), trip.to());
    List<Piece> pieces =
        loads.stream()
            .flatMap(load -> load.item().pieces().stream())
            .sorted(Comparator.comparing(Piece::code))
            .toList();
    return new Movement(
        pieces,
        roads.church(trip.from()),
        roads.church(trip.to()),
        Roads.instant(trip.who().isEmpty() ? ready : trip.ready()),
        Roads.instant(trip.who().isEmpty() ? due - time : trip.ready()),
        Roads.instant(trip.who().isEmpty() ? due : trip.due()),
        trip.who(),
        pieces.stream().anyMatch(piece -> situation.traits(piece).onAsking()));
  }
}
