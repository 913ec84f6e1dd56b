package vestiary.allocation.flow;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import vestiary.allocation.plan.Displeasure;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Tally;
import vestiary.allocation.solver.Program;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;

/** Those who wear chasubles at one Mass are glad to wear one suit. */
final class OneSuit {

  private final Demand demand;
  private final Classes classes;
  private final Program program;
  private final Costs costs;

  OneSuit(Demand demand, Classes classes, Program program, Costs costs) {
    this.demand = demand;
    this.classes = classes;
    this.program = program;
    this.costs = costs;
  }

  /** Writes the rows of one Mass. */
  void write(Slot slot, List<Supplied> own) {
    List<Group> groups =
        slot.groups().stream().filter(group -> kind(group) == PieceKind.CHASUBLE).toList();
    List<Provision> settled =
        demand.settled(slot).stream()
            .filter(one -> one.need().kind() == PieceKind.CHASUBLE)
            .toList();
    List<Need> needs = new ArrayList<>(settled.stream().map(Provision::need).toList());
    groups.forEach(group -> needs.addAll(group.needs()));
    if (!Tally.asksForOneSuit(needs, demand.situation())) {
      return;
    }
    List<Supplied> worn =
        own.stream()
            .filter(one -> one.type() >= 0)
            .filter(one -> kind(slot.groups().get(one.group())) == PieceKind.CHASUBLE)
            .toList();
    int unlike = program.column(0, 1);
    costs.add(Measure.PREFERENCES, unlike, Displeasure.SEVERAL_SUITS.weight());
    int any = program.row(1, Program.UNBOUNDED);
    program.put(any, unlike, 1);
    for (String suit : suits(settled, worn)) {
      int alike = program.column(0, 1);
      program.put(any, alike, 1);
      int row = program.row(0, Program.UNBOUNDED);
      program.put(row, alike, settled.size() - needs.size());
      worn.stream()
          .filter(one -> classes.suit(one.type()).equals(suit))
          .forEach(one -> program.put(row, one.column(), 1));
    }
  }

  /** Those in which all could be. */
  private Set<String> suits(List<Provision> settled, List<Supplied> worn) {
    Set<String> suits =
        settled.isEmpty()
            ? worn.stream().map(one -> classes.suit(one.type())).collect(Collectors.toSet())
            : settled.stream().map(this::suit).collect(Collectors.toSet());
    boolean unlike = !settled.isEmpty() && (suits.size() > 1 || suits.contains(""));
    return new TreeSet<>(unlike ? Set.of() : suits.stream().filter(s -> !s.isEmpty()).toList());
  }

  private String suit(Provision settled) {
    return Optional.of(settled)
        .flatMap(Provision::findPiece)
        .map(piece -> demand.situation().traits(piece).suit())
        .orElse("");
  }

  private PieceKind kind(Group group) {
    return demand.asks().get(group.ask()).kind();
  }
}
