package vestiary.allocation.flow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Takes a flow apart into chains, one for each item of each supply. Any way of doing so makes the
 * same trips and serves the same Masses.
 */
final class Walk {

  private final Network network;
  private final long[] left;
  private final Map<Integer, List<Arc>> leaving = new HashMap<>();

  private final int number;

  Walk(Network network, int number, long[] columns) {
    this.network = network;
    this.number = number;
    this.left = columns.clone();
    for (Arc arc : network.arcs()) {
      if (left[arc.column()] > 0) {
        leaving.computeIfAbsent(arc.from(), unknown -> new ArrayList<>()).add(arc);
      }
    }
  }

  /** As many chains as items, by supply. */
  List<Chain> chains() {
    List<Chain> chains = new ArrayList<>();
    for (int at = 0; at < network.sources().length; at++) {
      Supply supply = network.commodity().supplies().get(at);
      for (int item = 0; item < supply.size(); item++) {
        chains.add(
            new Chain(
                number,
                supply.items(),
                supply.after(),
                network.commodity().due(),
                walk(network.sources()[at])));
      }
    }
    return chains;
  }

  private List<Chain.Leg> walk(int source) {
    List<Chain.Leg> legs = new ArrayList<>();
    Arc arc = next(source);
    while (arc != null) {
      left[arc.column()]--;
      if (arc.slot() >= 0 || arc.trip() >= 0) {
        legs.add(new Chain.Leg(arc.slot(), arc.trip()));
      }
      arc = next(arc.to());
    }
    return legs;
  }

  private Arc next(int node) {
    for (Arc arc : leaving.getOrDefault(node, List.of())) {
      if (left[arc.column()] > 0) {
        return arc;
      }
    }
    return null;
  }
}
