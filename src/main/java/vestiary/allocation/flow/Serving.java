package vestiary.allocation.flow;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Tally;
import vestiary.allocation.solver.Program;
import vestiary.vesting.MassId;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Step;

/**
 * How the needs of each Mass are served out of the pieces that visit it: first choice, substitute,
 * left out or unmet.
 */
final class Serving {

  private record Stepping(Role role, Step step, int depth) {}

  private final Demand demand;
  private final Classes classes;
  private final Program program;
  private final Costs costs;
  private final Map<MassId, Costs> byMass = new HashMap<>();
  private final Imports imports;
  private final WholeWear wholes;
  private final OneSuit suits;
  private final AsBefore before;
  private final Map<Integer, List<Supplied>> bySlot = new HashMap<>();

  /** For each Mass, the columns of items that visit it with a piece of a class. */
  private final Map<Integer, Map<Integer, List<Integer>>> visiting = new HashMap<>();

  Serving(
      Demand demand,
      Classes classes,
      List<Network> networks,
      Imports imports,
      Roads roads,
      Program program,
      Costs costs) {
    this.imports = imports;
    this.wholes = new WholeWear(demand, classes, networks, program, costs);
    this.suits = new OneSuit(demand, classes, program, costs);
    this.before = new AsBefore(demand, classes, networks, roads, program, costs);
    this.demand = demand;
    this.classes = classes;
    this.program = program;
    this.costs = costs;
    networks.forEach(
        network ->
            network
                .serving()
                .forEach(
                    (slot, column) ->
                        network.commodity().classes().forEach(type -> admit(slot, type, column))));
  }

  /** Adds the row that a measure, counted over some Masses, be at most so much. */
  void limit(Measure measure, Set<MassId> masses, long most) {
    int row = program.row(-Program.UNBOUNDED, most);
    for (MassId mass : masses) {
      byMass
          .getOrDefault(mass, new Costs())
          .forEach(measure, (column, amount) -> program.put(row, column, amount));
    }
  }

  void write() {
    IntStream.range(0, demand.slots().size()).forEach(this::write);
  }

  private void admit(int slot, int type, int column) {
    visiting
        .computeIfAbsent(slot, unknown -> new TreeMap<>())
        .computeIfAbsent(type, unknown -> new ArrayList<>())
        .add(column);
  }

  private void write(int slot) {
    List<Group> groups = demand.slots().get(slot).groups();
    Map<Integer, List<Integer>> visits = visiting.getOrDefault(slot, Map.of());
    Map<Integer, List<Supplied>> byType = new TreeMap<>();
    List<Supplied> own = new ArrayList<>();
    for (int place = 0; place < groups.size(); place++) {
      for (Supplied one : columns(slot, place, groups.get(place), visits.keySet())) {
        own.add(one);
        if (one.type() >= 0) {
          byType.computeIfAbsent(one.type(), unknown -> new ArrayList<>()).add(one);
        }
      }
    }
    byType.forEach((type, uses) -> balance(uses, visits.get(type)));
    bySlot.put(slot, own);
    imports.write(slot, groups, own);
    countSteps(slot, groups, own);
    if (classes.arePreferring()) {
      wholes.write(slot, own);
      suits.write(demand.slots().get(slot), own);
      before.write(slot, own);
      addSettled(demand.slots().get(slot));
    }
  }

  /** What the wearers of one Mass have by a solution. */
  List<Outfit> outfits(int slot, long[] columns) {
    return new Outfits(demand, slot, columns).read(bySlot.get(slot), wholes.of(slot));
  }

  private List<Supplied> columns(int slot, int place, Group group, Set<Integer> types) {
    List<Supplied> columns = new ArrayList<>();
    for (int type : types) {
      if (classes.depth(type, group.ask()) != Ask.NEVER) {
        int column = program.column(0, group.size());
        int displeasure = classes.displeasure(type, group.ask());
        if (displeasure > 0) {
          costs.add(Measure.PREFERENCES, column, displeasure);
        }
        columns.add(new Supplied(slot, place, type, column));
      }
    }
    int without = program.column(0, group.size());
    boolean isLawful = ask(group).depthWithout() != Ask.NEVER;
    columns.add(new Supplied(slot, place, isLawful ? Supplied.LEFT_OUT : Supplied.UNMET, without));
    if (!isLawful) {
      charge(slot, unmet(group), without);
    }
    if (classes.arePreferring() && ask(group).displeasureWithout() > 0) {
      costs.add(Measure.PREFERENCES, without, ask(group).displeasureWithout());
    }
    int row = program.row(group.size(), group.size());
    columns.forEach(one -> program.put(row, one.column(), 1));
    return columns;
  }

  private void charge(int slot, Measure measure, int column) {
    costs.add(measure, column, 1);
    byMass
        .computeIfAbsent(demand.slots().get(slot).mass(), unknown -> new Costs())
        .add(measure, column, 1);
  }

  private static Measure unmet(Group group) {
    if (group.role() == Role.PRINCIPAL) {
      return Measure.UNMET_PRINCIPALS;
    }
    return group.must() ? Measure.UNMET_MUSTS : Measure.UNMET_OTHERS;
  }

  private void balance(List<Supplied> uses, List<Integer> visits) {
    int row = program.row(-Program.UNBOUNDED, 0);
    uses.forEach(one -> program.put(row, one.column(), 1));
    visits.forEach(column -> program.put(row, column, -1));
  }

  /**
   * Persons are counted, not pieces: whoever wears violet for rose does so with chasuble and stole.
   */
  private void countSteps(int slot, List<Group> groups, List<Supplied> own) {
    Map<Stepping, Map<PieceKind, List<Integer>>> stepping = new LinkedHashMap<>();
    for (Supplied one : own) {
      Group group = groups.get(one.group());
      int depth = depth(one, group);
      if (depth > 0) {
        Stepping key = new Stepping(group.role(), ask(group).ladder().get(depth - 1), depth);
        stepping
            .computeIfAbsent(key, unknown -> new EnumMap<>(PieceKind.class))
            .computeIfAbsent(ask(group).kind(), unknown -> new ArrayList<>())
            .add(one.column());
      }
    }
    Map<Stepping, Map<PieceKind, Integer>> settled = settledSteps(slot);
    settled.keySet().forEach(key -> stepping.putIfAbsent(key, new EnumMap<>(PieceKind.class)));
    stepping.forEach(
        (key, kinds) ->
            count(
                slot,
                Measure.step(key.depth()),
                kinds,
                settled.getOrDefault(key, Map.of()),
                groups));
  }

  private Map<Stepping, Map<PieceKind, Integer>> settledSteps(int slot) {
    Map<Stepping, Map<PieceKind, Integer>> settled = new LinkedHashMap<>();
    for (Provision one : demand.settled(demand.slots().get(slot))) {
      one.findStep()
          .ifPresent(
              step ->
                  settled
                      .computeIfAbsent(
                          new Stepping(one.need().role(), step, one.depth()),
                          unknown -> new EnumMap<>(PieceKind.class))
                      .merge(one.need().kind(), 1, Integer::sum));
    }
    return settled;
  }

  private void count(
      int slot,
      Measure step,
      Map<PieceKind, List<Integer>> kinds,
      Map<PieceKind, Integer> settled,
      List<Group> groups) {
    if (kinds.size() == 1 && settled.isEmpty()) {
      kinds.values().iterator().next().forEach(column -> charge(slot, step, column));
      return;
    }
    int more = settled.values().stream().mapToInt(Integer::intValue).sum();
    int persons = program.column(0, groups.stream().mapToInt(Group::size).sum() + more);
    charge(slot, step, persons);
    Set<PieceKind> all = new TreeSet<>(kinds.keySet());
    all.addAll(settled.keySet());
    for (PieceKind kind : all) {
      int row = program.row(-Program.UNBOUNDED, -settled.getOrDefault(kind, 0));
      kinds.getOrDefault(kind, List.of()).forEach(column -> program.put(row, column, 1));
      program.put(row, persons, -1);
    }
  }

  private int depth(Supplied one, Group group) {
    return switch (one.type()) {
      case Supplied.UNMET -> 0;
      case Supplied.LEFT_OUT -> ask(group).depthWithout();
      default -> classes.depth(one.type(), group.ask());
    };
  }

  /** What the settled needs of the Mass come to whatever is found. */
  private void addSettled(Slot slot) {
    List<Provision> settled = demand.settled(slot);
    addConstant(Measure.PREFERENCES, Tally.ofPersons(settled, demand.situation()));
    addConstant(Measure.CHANGES, Tally.changes(settled, demand.situation()));
  }

  private void addConstant(Measure measure, long amount) {
    if (amount > 0) {
      costs.add(measure, program.column(1, 1), Math.toIntExact(amount));
    }
  }

  private Ask ask(Group group) {
    return demand.asks().get(group.ask());
  }
}
