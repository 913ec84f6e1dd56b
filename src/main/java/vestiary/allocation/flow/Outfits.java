package vestiary.allocation.flow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import vestiary.allocation.plan.WholeSets;

/** Reads out of a solution what the wearers of one Mass have, one outfit for each. */
final class Outfits {

  private final Demand demand;
  private final List<Group> groups;
  private final long[] columns;

  /** By group: how many still have a class, after those in whole sets. */
  private final Map<Integer, Map<Integer, Long>> left = new TreeMap<>();

  private final List<Outfit> outfits = new ArrayList<>();

  Outfits(Demand demand, int slot, long[] columns) {
    this.demand = demand;
    this.groups = demand.slots().get(slot).groups();
    this.columns = columns;
  }

  List<Outfit> read(List<Supplied> own, List<WholeWear.Whole> wholes) {
    own.forEach(one -> add(one.group(), one.type(), columns[one.column()]));
    for (WholeWear.Whole one : wholes) {
      for (long number = 0; number < columns[one.column()]; number++) {
        outfits.add(new Outfit(one.outer(), one.type(), one.stole(), true));
      }
      add(one.outer(), one.type(), -columns[one.column()]);
      add(groups.get(one.outer()).mate(), one.stole(), -columns[one.column()]);
    }
    for (int place = 0; place < groups.size(); place++) {
      Group group = groups.get(place);
      if (!group.hasMate()) {
        int alone = place;
        rest(place).forEach(type -> outfits.add(new Outfit(alone, type, Outfit.NOTHING, false)));
      } else if (WholeSets.findStole(demand.asks().get(group.ask()).kind()).isPresent()) {
        List<Integer> outers = rest(place);
        List<Integer> stoles = rest(group.mate());
        for (int at = 0; at < outers.size(); at++) {
          outfits.add(new Outfit(place, outers.get(at), stoles.get(at), false));
        }
      }
    }
    return outfits;
  }

  private void add(int group, int type, long number) {
    left.computeIfAbsent(group, unknown -> new TreeMap<>(Comparator.reverseOrder()))
        .merge(type, number, Long::sum);
  }

  /** Those who wear something first. */
  private List<Integer> rest(int group) {
    List<Integer> types = new ArrayList<>();
    left.get(group)
        .forEach(
            (type, number) -> {
              for (long one = 0; one < number; one++) {
                types.add(type);
              }
            });
    return types;
  }
}
