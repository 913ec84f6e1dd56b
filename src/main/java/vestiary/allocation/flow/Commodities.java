package vestiary.allocation.flow;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import vestiary.vesting.MassId;

/**
 * Cuts the time of each item into the gaps between its fixed visits, and puts like gaps together. A
 * gap of one item never competes with another of the same item. A gap that serves nothing stays if
 * its two ends lie in different churches, for it takes a journey.
 */
final class Commodities {

  private record Key(
      List<Integer> classes, int bound, List<MassId> keptFrom, int burden, List<Visit> due) {}

  private final Roads roads;
  private final Classes classes;
  private final long from;
  private final long until;
  private final boolean anywhere;
  private final Map<Key, Map<Visit, List<Item>>> pools = new LinkedHashMap<>();

  private Commodities(Roads roads, Classes classes, Extent extent) {
    this.roads = roads;
    this.classes = classes;
    this.from = extent.from();
    this.until = extent.until();
    this.anywhere = extent.anywhere();
  }

  /** All commodities of a time, in order of their items' codes. */
  static List<Commodity> of(Collection<Item> items, Roads roads, Classes classes, Extent extent) {
    Commodities commodities = new Commodities(roads, classes, extent);
    items.forEach(commodities::cut);
    List<Commodity> all = new ArrayList<>();
    commodities.pools.forEach(
        (key, supplies) ->
            all.add(
                new Commodity(
                    key.classes(),
                    key.bound(),
                    key.keptFrom(),
                    key.burden(),
                    key.due(),
                    supplies.entrySet().stream()
                        .map(e -> new Supply(e.getKey(), e.getValue()))
                        .toList())));
    return all;
  }

  private void cut(Item item) {
    List<Integer> useful =
        item.pieces().stream().map(classes::of).filter(c -> c != Classes.USELESS).toList();
    Visit before = Visit.beforeAll(item.start());
    for (Visit visit : item.fixed()) {
      if (before.precedes(visit, roads)) {
        add(item, useful, before, List.of(visit));
      }
      before = visit;
    }
    add(item, useful, before, List.of());
  }

  private void add(Item item, List<Integer> useful, Visit after, List<Visit> due) {
    boolean ends = !due.isEmpty() && due.get(0).setOut() < until;
    boolean begins = after.cleared() > from;
    boolean travels = ends && due.get(0).place() != after.place();
    boolean within = after.cleared() < until && (due.isEmpty() || due.get(0).setOut() > from);
    if (!within || (useful.isEmpty() && (anywhere || !travels))) {
      return;
    }
    Visit start = begins ? after : Visit.beforeAll(startOf(item, after));
    Key key =
        new Key(
            useful,
            item.stays() ? item.start() : -1,
            item.keptFrom(),
            classes.burden(item),
            ends ? due : List.of());
    pools
        .computeIfAbsent(key, unknown -> new LinkedHashMap<>())
        .computeIfAbsent(start, unknown -> new ArrayList<>())
        .add(item);
  }

  private int startOf(Item item, Visit after) {
    if (!anywhere) {
      return after.place();
    }
    return item.stays() ? item.start() : roads.region(item.start());
  }
}
