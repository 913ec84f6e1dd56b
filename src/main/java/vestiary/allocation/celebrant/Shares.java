package vestiary.allocation.celebrant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import vestiary.allocation.solver.Answer;
import vestiary.allocation.solver.Program;
import vestiary.vesting.MassId;

/**
 * The choice of duties over all days at once, held to what was settled day by day, with each
 * priest's share of early and far Masses: first the greatest share, then the squares of all, whose
 * sum is least where shares are most alike.
 */
final class Shares {

  private final Choice choice;
  private final List<Priest> priests;
  private final Map<PriestId, Long> before = new HashMap<>();
  private final Map<MassId, PriestId> given;
  private final List<long[]> kept;
  private final int duties;
  private final int worst;
  private final Map<Priest, List<Integer>> parts = new HashMap<>();

  Shares(Question question, List<Duty> all, Map<MassId, PriestId> given) {
    this.given = given;
    this.choice = new Choice(question, all, question.masses());
    this.priests = question.priests();
    this.kept = choice.tiers();
    for (Priest priest : priests) {
      before.put(
          priest.id(), question.engagements(priest).stream().mapToLong(Engagement::burden).sum());
    }
    this.duties = choice.program().columns();
    long[] start = choice.values(given);
    long bound = priests.stream().mapToLong(priest -> share(priest, start)).max().orElse(0);
    this.worst = program().column(0, bound);
    priests.forEach(priest -> write(priest, (int) bound));
  }

  Program program() {
    return choice.program();
  }

  /**
   * Holds the duties of some days to what is settled of them. Where the answer tells which duties
   * no division that is as good has, these need no rows of costs, which hide from a solver that
   * what is left is a flow.
   */
  void keep(Choice stretch, Answer settled) {
    settled.face().ifPresent(face -> shut(stretch, face.shut()));
    if (settled.face().filter(Answer.Face::whole).isEmpty()) {
      limit(stretch, settled.values());
    }
  }

  private void shut(Choice stretch, BitSet columns) {
    columns.stream().forEach(column -> program().boundColumn(choice.place(stretch, column), 0, 0));
  }

  private void limit(Choice stretch, long[] values) {
    Set<CountedDay> days = stretch.duties().stream().map(Duty::day).collect(Collectors.toSet());
    for (int level = 0; level < values.length; level++) {
      long[] costs = kept.get(level).clone();
      for (int column = 0; column < costs.length; column++) {
        costs[column] = days.contains(dayOf(column)) ? costs[column] : 0;
      }
      program().limit(costs, values[level]);
    }
  }

  /** The greatest share, the squares, the changes. */
  List<long[]> tiers() {
    long[] greatest = new long[program().columns()];
    greatest[worst] = 1;
    long[] squares = new long[program().columns()];
    parts.forEach(
        (priest, columns) ->
            IntStream.range(0, columns.size())
                .forEach(place -> squares[columns.get(place)] = square(priest, place)));
    return List.of(greatest, squares, Arrays.copyOf(choice.changes(), program().columns()));
  }

  /** What one more costs: 1, 3, 5 and so on, which add up to the squares. */
  private long square(Priest priest, int place) {
    return 2 * (before.get(priest.id()) + place) + 1;
  }

  /** The division that the days were settled with. */
  long[] start() {
    long[] values = Arrays.copyOf(choice.values(given), program().columns());
    for (Priest priest : priests) {
      long share = share(priest, values);
      values[worst] = Math.max(values[worst], share);
      for (int place = 0; place < share - before.get(priest.id()); place++) {
        values[parts.get(priest).get(place)] = 1;
      }
    }
    return values;
  }

  Map<MassId, PriestId> given(long[] values) {
    return choice.given(values);
  }

  private void write(Priest priest, int bound) {
    int most = (int) Math.max(0, bound - before.get(priest.id()));
    List<Integer> columns = new ArrayList<>();
    int sum = program().row(0, 0);
    int least = program().row(-Program.UNBOUNDED, -before.get(priest.id()));
    for (int column = 0; column < choice.duties().size(); column++) {
      Duty duty = choice.duties().get(column);
      if (duty.priest().equals(priest) && duty.burden() > 0) {
        program().put(sum, column, (int) duty.burden());
        program().put(least, column, (int) duty.burden());
      }
    }
    for (int place = 0; place < most; place++) {
      int part = program().column(0, 1);
      columns.add(part);
      program().put(sum, part, -1);
    }
    program().put(least, worst, -1);
    parts.put(priest, columns);
  }

  private CountedDay dayOf(int column) {
    return column < choice.duties().size()
        ? choice.duties().get(column).day()
        : choice.massOf(column).day();
  }

  private long share(Priest priest, long[] values) {
    return before.get(priest.id())
        + IntStream.range(0, choice.duties().size())
            .filter(column -> values[column] == 1)
            .mapToObj(column -> choice.duties().get(column))
            .filter(duty -> duty.priest().equals(priest))
            .mapToLong(Duty::burden)
            .sum();
  }
}
