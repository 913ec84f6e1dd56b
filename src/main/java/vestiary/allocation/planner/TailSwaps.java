package vestiary.allocation.planner;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.flow.Chain;
import vestiary.allocation.flow.FlowModel;
import vestiary.allocation.flow.Roads;
import vestiary.allocation.flow.Trip;

/**
 * Where two items that may stand in for one another lie in the same church at the same time, they
 * may go on in one another's stead: the same Masses are served and the same trips made. Swaps so
 * until none brings more of the last plan back.
 */
final class TailSwaps {

  private final FlowModel model;
  private final LastWorn last;

  TailSwaps(FlowModel model, LastWorn last) {
    this.model = model;
    this.last = last;
  }

  /** The same itineraries with the ends of some exchanged. */
  List<Itinerary> of(List<Itinerary> itineraries) {
    Map<Integer, List<Itinerary>> alike =
        itineraries.stream()
            .collect(
                Collectors.groupingBy(
                    Itinerary::commodity,
                    LinkedHashMap::new,
                    Collectors.toCollection(ArrayList::new)));
    alike.values().forEach(this::swapAll);
    return alike.values().stream().flatMap(Collection::stream).toList();
  }

  private void swapAll(List<Itinerary> own) {
    boolean swapped;
    do {
      swapped = false;
      for (int one = 0; one < own.size(); one++) {
        for (int other = one + 1; other < own.size(); other++) {
          swapped |= swap(own, one, other);
        }
      }
    } while (swapped);
  }

  /** Each swap brings more of the last plan back, so that there is an end. */
  private boolean swap(List<Itinerary> own, int one, int other) {
    Itinerary first = own.get(one);
    Itinerary second = own.get(other);
    for (int cut = 0; cut <= first.legs().size(); cut++) {
      for (int at = 0; at <= second.legs().size(); at++) {
        if (canMeet(first, cut, second, at)) {
          Itinerary left = joined(first, cut, second, at);
          Itinerary right = joined(second, at, first, cut);
          if (kept(left) + kept(right) > kept(first) + kept(second)) {
            own.set(one, left);
            own.set(other, right);
            return true;
          }
        }
      }
    }
    return false;
  }

  private long kept(Itinerary one) {
    return last.kept(one.item(), one.legs(), model);
  }

  private static Itinerary joined(Itinerary head, int cut, Itinerary tail, int at) {
    return head.with(
        Stream.concat(
                head.legs().subList(0, cut).stream(),
                tail.legs().subList(at, tail.legs().size()).stream())
            .toList());
  }

  private boolean canMeet(Itinerary first, int cut, Itinerary second, int at) {
    return place(first, cut) == place(second, at)
        && free(first, cut) <= next(second, at)
        && free(second, at) <= next(first, cut);
  }

  private int place(Itinerary one, int cut) {
    if (cut == 0) {
      return one.after().place();
    }
    Chain.Leg leg = one.legs().get(cut - 1);
    return leg.isMass() ? model.slot(leg.slot()).visit().place() : model.trip(leg.trip()).to();
  }

  /** From when it lies there. */
  private long free(Itinerary one, int cut) {
    if (cut == 0) {
      return one.after().cleared();
    }
    Chain.Leg leg = one.legs().get(cut - 1);
    return leg.isMass() ? model.slot(leg.slot()).visit().cleared() : model.trip(leg.trip()).due();
  }

  /** Until when it can lie there. */
  private long next(Itinerary one, int cut) {
    if (cut == one.legs().size()) {
      return one.due().isEmpty() ? Roads.NEVER : one.due().get(0).setOut();
    }
    Chain.Leg leg = one.legs().get(cut);
    if (leg.isMass()) {
      return model.slot(leg.slot()).visit().setOut();
    }
    Trip trip = model.trip(leg.trip());
    return trip.ready();
  }
}
