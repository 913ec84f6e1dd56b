package vestiary.allocation.flow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.solver.Program;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/**
 * What the last plan had for each need, as far as it can be kept: by class, since pieces of one
 * class are not told apart, but never what that very piece cannot serve any more.
 */
final class AsBefore {

  private record Stock(Network network, Supply supply) {}

  private final Demand demand;
  private final Classes classes;
  private final Roads roads;
  private final Program program;
  private final Costs costs;
  private final Map<String, List<Stock>> stocks = new HashMap<>();
  private final Map<String, Piece> pieces = new HashMap<>();

  AsBefore(
      Demand demand,
      Classes classes,
      List<Network> networks,
      Roads roads,
      Program program,
      Costs costs) {
    this.demand = demand;
    this.classes = classes;
    this.roads = roads;
    this.program = program;
    this.costs = costs;
    if (!demand.lastByNeed().isEmpty()) {
      networks.forEach(this::stock);
    }
  }

  private void stock(Network network) {
    for (Supply supply : network.commodity().supplies()) {
      for (Item item : supply.items()) {
        for (Piece piece : item.pieces()) {
          pieces.put(piece.code(), piece);
          stocks
              .computeIfAbsent(piece.code(), unknown -> new ArrayList<>())
              .add(new Stock(network, supply));
        }
      }
    }
  }

  /** Writes the rows of one Mass. */
  void write(int slot, List<Supplied> own) {
    List<Group> groups = demand.slots().get(slot).groups();
    for (int place = 0; place < groups.size(); place++) {
      int known = 0;
      Map<Integer, Integer> types = new TreeMap<>();
      for (Need need : groups.get(place).needs()) {
        Provision was = demand.lastByNeed().get(need);
        if (was != null) {
          known++;
          findType(slot, was).ifPresent(type -> types.merge(type, 1, Integer::sum));
        }
      }
      if (known > 0) {
        keep(place, known, types, own);
      }
    }
  }

  private Optional<Integer> findType(int slot, Provision was) {
    if (was instanceof Provision.Worn worn) {
      String code = worn.piece().code();
      Visit visit = demand.slots().get(slot).visit();
      return stocks.getOrDefault(code, List.of()).stream()
          .filter(one -> one.network().serving().containsKey(slot))
          .filter(one -> one.supply().after().precedes(visit, roads))
          .findAny()
          .map(one -> classes.of(pieces.get(code)));
    }
    return Optional.of(was instanceof Provision.LeftOut ? Supplied.LEFT_OUT : Supplied.UNMET);
  }

  private void keep(int place, int known, Map<Integer, Integer> types, List<Supplied> own) {
    int changed = program.column(0, known);
    costs.add(Measure.CHANGES, changed, 1);
    int row = program.row(known, Program.UNBOUNDED);
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
}
