package vestiary.allocation.flow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import vestiary.allocation.plan.Displeasure;
import vestiary.allocation.plan.WholeSets;
import vestiary.allocation.solver.Program;
import vestiary.vesting.PieceKind;

/**
 * How many wearers have a chasuble or dalmatic with the stole of its set; all others who wear one,
 * though a stole is asked for them too, are mixed.
 */
final class WholeWear {

  /**
   * Wearers of whole sets.
   *
   * @param outer place of the group of what goes over the stole
   * @param type class of that
   * @param stole class of the stole
   * @param column how many
   */
  record Whole(int outer, int type, int stole, int column) {}

  private record Pair(int type, int stole) {}

  private final Classes classes;
  private final Demand demand;
  private final Program program;
  private final Costs costs;

  /** For each Mass, the columns of whole sets that visit it. */
  private final Map<Integer, Map<Pair, List<Integer>>> visiting = new HashMap<>();

  private final Map<Integer, List<Whole>> bySlot = new HashMap<>();

  WholeWear(Demand demand, Classes classes, List<Network> networks, Program program, Costs costs) {
    this.demand = demand;
    this.classes = classes;
    this.program = program;
    this.costs = costs;
    for (Network network : networks) {
      List<Integer> types = network.commodity().classes();
      if (types.size() == 2) {
        Pair pair = new Pair(types.get(0), types.get(1));
        network
            .serving()
            .forEach(
                (slot, column) ->
                    visiting
                        .computeIfAbsent(slot, unknown -> new HashMap<>())
                        .computeIfAbsent(pair, unknown -> new ArrayList<>())
                        .add(column));
      }
    }
  }

  /** Of one Mass. */
  List<Whole> of(int slot) {
    return bySlot.getOrDefault(slot, List.of());
  }

  /** Writes the rows of one Mass. */
  void write(int slot, List<Supplied> own) {
    List<Group> groups = demand.slots().get(slot).groups();
    Map<Integer, Map<Integer, Integer>> columns = new TreeMap<>();
    own.stream()
        .filter(one -> one.type() >= 0)
        .forEach(
            one ->
                columns
                    .computeIfAbsent(one.group(), unknown -> new TreeMap<>())
                    .put(one.type(), one.column()));
    Map<Pair, List<Integer>> wearing = new HashMap<>();
    for (int outer : columns.keySet()) {
      Group group = groups.get(outer);
      if (group.hasMate() && isOuter(group)) {
        write(slot, outer, columns, wearing);
      }
    }
    wearing.forEach((pair, wholes) -> limit(wholes, visiting.get(slot).get(pair)));
  }

  private boolean isOuter(Group group) {
    PieceKind kind = demand.asks().get(group.ask()).kind();
    return WholeSets.findStole(kind).isPresent();
  }

  private void write(
      int slot,
      int outer,
      Map<Integer, Map<Integer, Integer>> columns,
      Map<Pair, List<Integer>> wearing) {
    Group group = demand.slots().get(slot).groups().get(outer);
    Map<Integer, Integer> stoles = columns.getOrDefault(group.mate(), Map.of());
    Map<Pair, List<Integer>> visits = visiting.getOrDefault(slot, Map.of());
    Map<Integer, List<Integer>> byStole = new TreeMap<>();
    int mixed = program.column(0, group.size());
    costs.add(Measure.PREFERENCES, mixed, Displeasure.MIXED.weight());
    int others = program.row(-Program.UNBOUNDED, 0);
    program.put(others, mixed, -1);
    columns
        .get(outer)
        .forEach(
            (type, column) -> {
              program.put(others, column, 1);
              List<Integer> byType = new ArrayList<>();
              for (int stole : stoles.keySet()) {
                Pair pair = new Pair(type, stole);
                if (visits.containsKey(pair) || classes.areOneLooseSet(type, stole)) {
                  int whole = program.column(0, group.size());
                  program.put(others, whole, -1);
                  byType.add(whole);
                  byStole.computeIfAbsent(stole, unknown -> new ArrayList<>()).add(whole);
                  bySlot
                      .computeIfAbsent(slot, unknown -> new ArrayList<>())
                      .add(new Whole(outer, type, stole, whole));
                  if (visits.containsKey(pair)) {
                    wearing.computeIfAbsent(pair, unknown -> new ArrayList<>()).add(whole);
                  }
                }
              }
              limit(byType, List.of(column));
            });
    byStole.forEach((stole, wholes) -> limit(wholes, List.of(stoles.get(stole))));
  }

  private void limit(List<Integer> some, List<Integer> most) {
    if (!some.isEmpty()) {
      int row = program.row(-Program.UNBOUNDED, 0);
      some.forEach(column -> program.put(row, column, 1));
      most.forEach(column -> program.put(row, column, -1));
    }
  }
}
