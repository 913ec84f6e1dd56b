package vestiary.allocation.flow;

import java.util.List;

/**
 * What one item out of a supply does, one after the other.
 *
 * @param commodity number of the items that may stand in for one another while they are free
 * @param items those of which any may be the one
 * @param after where it comes from
 * @param due where it must be in the end, if anywhere
 * @param legs Masses served and trips made
 */
public record Chain(int commodity, List<Item> items, Visit after, List<Visit> due, List<Leg> legs) {

  public Chain {
    legs = List.copyOf(legs);
  }

  /**
   * One Mass or one trip.
   *
   * @param slot number of the Mass, or -1
   * @param trip number of the trip, or -1
   */
  public record Leg(int slot, int trip) {

    public boolean isMass() {
      return slot >= 0;
    }
  }
}
