package vestiary.allocation.flow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import vestiary.allocation.solver.Program;

/**
 * Where a Mass asks for more than lies at its church, some journey must lead there before. That
 * follows from the flows, but only in whole numbers; said in so many words it brings the bound on
 * carriages close to the truth.
 */
final class Imports {

  private final Demand demand;
  private final Classes classes;
  private final List<Network> networks;
  private final Trips trips;
  private final Roads roads;
  private final Program program;
  private final Map<Integer, List<Integer>> tripsInto = new HashMap<>();

  Imports(
      Demand demand,
      Classes classes,
      List<Network> networks,
      Trips trips,
      Roads roads,
      Program program) {
    this.demand = demand;
    this.classes = classes;
    this.networks = networks;
    this.trips = trips;
    this.roads = roads;
    this.program = program;
    for (int trip = 0; trip < trips.all().size(); trip++) {
      if (trips.isCarriage(trip) || trips.all().get(trip).isRide()) {
        tripsInto
            .computeIfAbsent(trips.all().get(trip).to(), unknown -> new ArrayList<>())
            .add(trip);
      }
    }
  }

  /**
   * Writes the rows of one Mass, where journeys are counted by carriages.
   *
   * @param own columns of its needs
   */
  void write(int slot, List<Group> groups, List<Supplied> own) {
    if (!trips.areShared()) {
      return;
    }
    for (int ask : groups.stream().map(Group::ask).collect(Collectors.toCollection(TreeSet::new))) {
      List<Supplied> proper =
          own.stream()
              .filter(one -> one.type() >= 0)
              .filter(one -> groups.get(one.group()).ask() == ask)
              .filter(one -> classes.depth(one.type(), ask) == 0)
              .toList();
      int asked = groups.stream().filter(group -> group.ask() == ask).mapToInt(Group::size).sum();
      write(slot, proper, asked);
    }
  }

  private void write(int slot, List<Supplied> proper, int asked) {
    Set<Integer> types = proper.stream().map(Supplied::type).collect(Collectors.toSet());
    Visit visit = demand.slots().get(slot).visit();
    int there = there(types, visit);
    if (there >= asked || proper.isEmpty()) {
      return;
    }
    int row = program.row(-Program.UNBOUNDED, there);
    proper.forEach(one -> program.put(row, one.column(), 1));
    for (int trip : tripsInto.getOrDefault(visit.place(), List.of())) {
      if (trips.all().get(trip).due() <= visit.setOut()) {
        int weight = there - asked;
        if (trips.isCarriage(trip)) {
          program.put(row, trips.carriages().get(trip), weight);
        } else {
          trips.flows(trip).forEach(column -> program.put(row, column, weight));
        }
      }
    }
  }

  /** How many items that serve lie at the church before anything is carried. */
  private int there(Set<Integer> types, Visit visit) {
    Set<Item> items = new HashSet<>();
    for (Network network : networks) {
      if (network.commodity().classes().stream().anyMatch(types::contains)) {
        for (Supply supply : network.commodity().supplies()) {
          if (supply.after().place() == visit.place() && supply.after().precedes(visit, roads)) {
            items.addAll(supply.items());
          }
        }
      }
    }
    return items.size();
  }
}
