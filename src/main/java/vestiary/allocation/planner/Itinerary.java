package vestiary.allocation.planner;

import java.util.List;
import vestiary.allocation.flow.Chain;
import vestiary.allocation.flow.Item;
import vestiary.allocation.flow.Visit;

/**
 * What one item does between two of its fixed visits.
 *
 * @param commodity number of the items that may stand in for one another meanwhile
 * @param after where it comes from
 * @param due where it must be in the end, if anywhere
 * @param legs Masses and trips, in order of time
 */
record Itinerary(int commodity, Item item, Visit after, List<Visit> due, List<Chain.Leg> legs) {

  Itinerary {
    legs = List.copyOf(legs);
  }

  Itinerary with(List<Chain.Leg> others) {
    return new Itinerary(commodity, item, after, due, others);
  }
}
