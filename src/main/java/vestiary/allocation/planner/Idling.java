package vestiary.allocation.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import vestiary.allocation.flow.Chain;
import vestiary.allocation.flow.FlowModel;

/** What an item does for nothing: visits of Masses where it is not worn, ways there and back. */
final class Idling {

  private final FlowModel model;
  private final Map<Integer, Set<String>> worn;

  /**
   * @param worn codes of pieces, by number of the Mass
   */
  Idling(FlowModel model, Map<Integer, Set<String>> worn) {
    this.model = model;
    this.worn = worn;
  }

  /** The same itinerary without it. */
  Itinerary without(Itinerary itinerary) {
    List<Chain.Leg> legs =
        itinerary.legs().stream().filter(leg -> !leg.isMass() || isWorn(itinerary, leg)).toList();
    int last =
        itinerary.due().isEmpty()
            ? IntStream.range(0, legs.size()).filter(at -> legs.get(at).isMass()).max().orElse(-1)
            : legs.size() - 1;
    return itinerary.with(straight(itinerary.after().place(), legs.subList(0, last + 1)));
  }

  private boolean isWorn(Itinerary itinerary, Chain.Leg leg) {
    return itinerary.item().pieces().stream()
        .anyMatch(piece -> worn.get(leg.slot()).contains(piece.code()));
  }

  /** Without trips that lead back to where it was since the last Mass. */
  private List<Chain.Leg> straight(int start, List<Chain.Leg> legs) {
    List<Chain.Leg> kept = new ArrayList<>();
    List<Integer> places = new ArrayList<>(List.of(start));
    for (Chain.Leg leg : legs) {
      kept.add(leg);
      if (leg.isMass()) {
        places = new ArrayList<>(List.of(model.slot(leg.slot()).visit().place()));
      } else {
        int to = model.trip(leg.trip()).to();
        int before = places.indexOf(to);
        if (before >= 0) {
          int loop = places.size() - before;
          kept.subList(kept.size() - loop, kept.size()).clear();
          places.subList(before + 1, places.size()).clear();
        } else {
          places.add(to);
        }
      }
    }
    return kept;
  }
}
