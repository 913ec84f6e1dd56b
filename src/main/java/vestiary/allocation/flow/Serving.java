package vestiary.allocation.flow;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.solver.Program;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Step;

/**
 * How the needs of each Mass are served out of the pieces that visit it: first choice, substitute,
 * left out or unmet.
 */
final class Serving {

  private static final int NOT_ALL_OF_ONE_SUIT = 8;

  private record Stepping(Role role, Step step, int depth) {}

  private final Demand demand;
  private final Classes classes;
  private final Program program;
  private final Costs costs;
  private final Map<MassId, Costs> byMass = new HashMap<>();
  private final Imports imports;

  /** For each Mass, the columns of items that visit it with a piece of a class. */
  private final Map<Integer, Map<Integer, List<Integer>>> visiting = new HashMap<>();

  Serving(
      Demand demand,
      Classes classes,
      List<Network> networks,
      Imports imports,
      Program program,
      Costs costs) {
    this.imports = imports;
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
    imports.write(slot, groups, own);
    countSteps(slot, groups, own);
    likeSuits(groups, own);
    likeLast(groups, own);
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
    if (ask(group).depthWithout() == Ask.NEVER) {
      int column = program.column(0, group.size());
      charge(slot, unmet(group), column);
      columns.add(new Supplied(slot, place, Supplied.UNMET, column));
    } else {
      int column = program.column(0, group.size());
      columns.add(new Supplied(slot, place, Supplied.LEFT_OUT, column));
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
    stepping.forEach(
        (key, kinds) -> count(slot, Measure.step(key.depth()), kinds.values(), groups));
  }

  private void count(int slot, Measure step, Collection<List<Integer>> kinds, List<Group> groups) {
    if (kinds.size() == 1) {
      kinds.iterator().next().forEach(column -> charge(slot, step, column));
      return;
    }
    int persons = program.column(0, groups.stream().mapToInt(Group::size).sum());
    charge(slot, step, persons);
    for (List<Integer> columns : kinds) {
      int row = program.row(-Program.UNBOUNDED, 0);
      columns.forEach(column -> program.put(row, column, 1));
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

  /** Those who vest together are glad to wear one suit. */
  private void likeSuits(List<Group> groups, List<Supplied> own) {
    List<Supplied> chasubles =
        own.stream()
            .filter(one -> ask(groups.get(one.group())).kind() == PieceKind.CHASUBLE)
            .toList();
    int persons =
        groups.stream()
            .filter(group -> ask(group).kind() == PieceKind.CHASUBLE)
            .mapToInt(Group::size)
            .sum();
    Set<String> suits = new TreeSet<>();
    chasubles.stream()
        .filter(one -> one.type() >= 0)
        .forEach(one -> suits.add(classes.suit(one.type())));
    suits.remove("");
    if (persons < 2 || suits.isEmpty()) {
      return;
    }
    int unlike = program.column(0, 1);
    costs.add(Measure.PREFERENCES, unlike, NOT_ALL_OF_ONE_SUIT);
    int any = program.row(1, Program.UNBOUNDED);
    program.put(any, unlike, 1);
    for (String suit : suits) {
      int alike = program.column(0, 1);
      program.put(any, alike, 1);
      int row = program.row(0, Program.UNBOUNDED);
      program.put(row, alike, -persons);
      chasubles.stream()
          .filter(one -> one.type() >= 0 && classes.suit(one.type()).equals(suit))
          .forEach(one -> program.put(row, one.column(), 1));
    }
  }

  /** What the last plan had for each need, as far as it can be kept. */
  private void likeLast(List<Group> groups, List<Supplied> own) {
    if (demand.situation().last().isEmpty()) {
      return;
    }
    Map<Need, Provision> last = demand.lastByNeed();
    for (int place = 0; place < groups.size(); place++) {
      Map<Integer, Integer> types = new TreeMap<>();
      for (Need need : groups.get(place).needs()) {
        Optional.ofNullable(last.get(need))
            .ifPresent(was -> types.merge(type(was), 1, Integer::sum));
      }
      if (!types.isEmpty()) {
        keep(place, types, own);
      }
    }
  }

  private int type(Provision was) {
    if (was instanceof Provision.Worn worn) {
      return classes.of(worn.piece());
    }
    return was instanceof Provision.LeftOut ? Supplied.LEFT_OUT : Supplied.UNMET;
  }

  private void keep(int place, Map<Integer, Integer> types, List<Supplied> own) {
    int all = types.values().stream().mapToInt(Integer::intValue).sum();
    int changed = program.column(0, all);
    costs.add(Measure.CHANGES, changed, 1);
    int row = program.row(all, Program.UNBOUNDED);
    program.put(row, changed, 1);
    Set<Integer> open = new HashSet<>(types.keySet());
    for (Supplied one : own) {
      if (one.group() == place && open.remove(one.type())) {
        int kept = program.column(0, types.get(one.type()));
        program.put(row, kept, 1);
        int atMost = program.row(-Program.UNBOUNDED, 0);
        program.put(atMost, kept, 1);
        program.put(atMost, one.column(), -1);
      }
    }
  }

  private Ask ask(Group group) {
    return demand.asks().get(group.ask());
  }
}
