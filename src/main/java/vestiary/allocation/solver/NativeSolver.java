package vestiary.allocation.solver;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Measure by measure on the faces of the relaxation, which for flows is nearly always whole and so
 * proves itself; what is left goes to a search over whole numbers, with a row for each measure
 * already settled.
 */
final class NativeSolver implements Solver {

  /** Of the work allowed, what the search for the best switches may take. */
  private static final double SWITCHING = 0.9;

  /** Of the work that is left, what the search on one face may take; most faces need little. */
  private static final double ON_A_FACE = 0.5;

  @Override
  public Answer minimise(Program program, List<long[]> tiers, long[] hint, Work work) {
    Descent descent = Descent.down(program, tiers, work);
    List<Long> least = descent.least();
    Optional<Answer> whole = descent.findWhole();
    if (whole.isPresent()) {
      return whole.get();
    }
    int switching = switchingTiers(program, tiers);
    if (switching == 0) {
      return onFaces(descent, program, tiers, hint, work);
    }
    if (work.units() == 0) {
      return new TieredSearch(program, tiers, WholeNumberSearch::search).run(least, hint, work);
    }
    boolean sound = hint.length == program.columns() && program.admits(hint);
    SwitchSearch.Found found =
        new SwitchSearch(program, tiers.subList(0, switching), sound ? hint : new long[0])
            .run(work.withUnits(work.units() * SWITCHING));
    Program stronger = program.copy();
    found.wanted().forEach(stronger::requireAny);
    Answer answer =
        new TieredSearch(stronger, tiers, WholeNumberSearch::search)
            .run(
                higher(found.least(), least),
                found.columns().length > 0 ? found.columns() : hint,
                work.withUnits(work.units() - found.work()));
    return new Answer(
        answer.columns(), answer.values(), answer.bounds(), answer.work() + found.work());
  }

  /**
   * Whole values on the narrowest face that has any, where few columns are left to search; the
   * measures that led there are then at their least.
   */
  private static Answer onFaces(
      Descent descent, Program program, List<long[]> tiers, long[] hint, Work work) {
    double done = 0;
    int narrowest = descent.narrowings().size();
    for (int settled = narrowest; settled > 0; settled--) {
      if (settled < narrowest && descent.isLeftAsItWas(settled + 1)) {
        continue;
      }
      Answer rest =
          new TieredSearch(
                  descent.narrowed(settled),
                  tiers.subList(settled, tiers.size()),
                  WholeNumberSearch::search)
              .run(
                  descent.least().subList(settled, descent.least().size()),
                  hint,
                  work.withUnits((work.units() - done) * ON_A_FACE));
      done += rest.work();
      if (rest.isFound()) {
        return descent.onFace(settled, rest, done);
      }
    }
    Answer answer =
        new TieredSearch(program, tiers, WholeNumberSearch::search)
            .run(descent.least(), hint, work.withUnits(work.units() - done));
    return new Answer(answer.columns(), answer.values(), answer.bounds(), answer.work() + done);
  }

  /** How many of the first measures cost switches and nothing else. */
  private static int switchingTiers(Program program, List<long[]> tiers) {
    BitSet switches = program.switches();
    int number = 0;
    while (number < tiers.size()
        && !switches.isEmpty()
        && costly(tiers.get(number)).allMatch(switches::get)) {
      number++;
    }
    return number;
  }

  private static IntStream costly(long[] costs) {
    return IntStream.range(0, costs.length).filter(column -> costs[column] != 0);
  }

  /** Of two lists of the least that measures can be the one that says more. */
  private static List<Long> higher(List<Long> one, List<Long> other) {
    for (int tier = 0; tier < Math.min(one.size(), other.size()); tier++) {
      int order = one.get(tier).compareTo(other.get(tier));
      if (order != 0) {
        return order > 0 ? one : other;
      }
    }
    return one.size() > other.size() ? one : other;
  }
}
