package vestiary.allocation.celebrant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToLongFunction;
import vestiary.allocation.solver.Program;
import vestiary.vesting.MassId;

/**
 * The choice of one duty for each priest and day, so that each Mass is in one of them or stays
 * without a celebrant, as a program in whole numbers. Of such programs (set partitioning) the
 * linear relaxation is nearly always whole.
 */
final class Choice {

  private final Question question;
  private final List<Duty> duties;
  private final List<MassToServe> masses;
  private final Program program = new Program();
  private final Map<MassId, Integer> unserved = new LinkedHashMap<>();
  private final Map<Duty, Integer> places = new IdentityHashMap<>();

  /**
   * Of some Masses and all duties that have any of them.
   *
   * @param duties with the empty one of each priest and day
   */
  Choice(Question question, List<Duty> duties, List<MassToServe> masses) {
    this.question = question;
    this.duties = duties;
    this.masses = masses;
    duties.forEach(duty -> places.put(duty, program.column(0, 1)));
    masses.forEach(mass -> unserved.put(mass.id(), program.column(0, 1)));
    writeOneDutyEach();
    writeEachMassOnce();
    writeCrossings();
  }

  Program program() {
    return program;
  }

  List<Duty> duties() {
    return duties;
  }

  /** The Mass of which a column says that nobody says it. */
  MassToServe massOf(int column) {
    return masses.get(column - duties.size());
  }

  /** Where a column of a choice of some of these days stands in this one. */
  int place(Choice part, int column) {
    if (column >= part.duties.size()) {
      return unserved.get(part.massOf(column).id());
    }
    return places.get(part.duties.get(column));
  }

  /** The costs of the levels that are settled Mass by Mass and priest by priest. */
  List<long[]> tiers() {
    List<long[]> tiers = new ArrayList<>();
    for (int level = 0; level < Levels.BY_DUTY; level++) {
      int place = level;
      tiers.add(costs(duty -> duty.costs()[place]));
    }
    for (MassToServe mass : masses) {
      tiers.get(mass.occasion().comesFirst() ? 0 : 1)[unserved.get(mass.id())] = 1;
    }
    return tiers;
  }

  /** The costs of naming somebody else than is named now, or nobody. */
  long[] changes() {
    long[] costs = costs(Duty::changes);
    masses.stream()
        .filter(mass -> !mass.now().isEmpty())
        .forEach(mass -> costs[unserved.get(mass.id())] = 1);
    return costs;
  }

  /** A cost for each column there is by now, from that of each duty. */
  long[] costs(ToLongFunction<Duty> cost) {
    long[] costs = new long[program.columns()];
    for (int column = 0; column < duties.size(); column++) {
      costs[column] = cost.applyAsLong(duties.get(column));
    }
    return costs;
  }

  /** The values of a division that keeps every rule. */
  long[] values(Map<MassId, PriestId> given) {
    long[] values = new long[program.columns()];
    for (int column = 0; column < duties.size(); column++) {
      values[column] = isWhollyGiven(duties.get(column), given) ? 1 : 0;
    }
    masses.forEach(mass -> values[unserved.get(mass.id())] = given.containsKey(mass.id()) ? 0 : 1);
    return values;
  }

  /** The division that some values are. */
  Map<MassId, PriestId> given(long[] values) {
    Map<MassId, PriestId> given = new HashMap<>();
    for (int column = 0; column < duties.size(); column++) {
      if (values[column] == 1) {
        Duty duty = duties.get(column);
        duty.masses().forEach(mass -> given.put(mass.id(), duty.priest().id()));
      }
    }
    return given;
  }

  private boolean isWhollyGiven(Duty duty, Map<MassId, PriestId> given) {
    long his =
        masses.stream()
            .filter(mass -> mass.day().equals(duty.day()))
            .filter(mass -> duty.priest().id().equals(given.get(mass.id())))
            .count();
    return his == duty.masses().size()
        && duty.masses().stream().allMatch(mass -> duty.priest().id().equals(given.get(mass.id())));
  }

  private void writeOneDutyEach() {
    Map<PriestId, Map<CountedDay, Integer>> rows = new HashMap<>();
    for (int column = 0; column < duties.size(); column++) {
      Duty duty = duties.get(column);
      int row =
          rows.computeIfAbsent(duty.priest().id(), none -> new TreeMap<>())
              .computeIfAbsent(duty.day(), none -> program.row(1, 1));
      program.put(row, column, 1);
    }
  }

  private void writeEachMassOnce() {
    Map<MassId, Integer> rows = new HashMap<>();
    for (MassToServe mass : masses) {
      rows.put(mass.id(), program.row(1, 1));
      program.put(rows.get(mass.id()), unserved.get(mass.id()), 1);
    }
    for (int column = 0; column < duties.size(); column++) {
      for (MassToServe mass : duties.get(column).masses()) {
        program.put(rows.get(mass.id()), column, 1);
      }
    }
  }

  private void writeCrossings() {
    for (Crossing crossing : Crossing.all(question, duties)) {
      int row = program.row(0, 1);
      for (int column = 0; column < duties.size(); column++) {
        Duty duty = duties.get(column);
        if (duty.priest().equals(crossing.priest())
            && (duty.masses().contains(crossing.one())
                || duty.masses().contains(crossing.other()))) {
          program.put(row, column, 1);
        }
      }
    }
  }
}
