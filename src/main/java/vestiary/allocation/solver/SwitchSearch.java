package vestiary.allocation.solver;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Which switches of a program must be on, proven from small reasons. Turn by turn the cheapest
 * switches are chosen that some known sets want at least one of each; where the rest of the program
 * has no solution with those, another such set is found, as small as can be, and added. The cost of
 * the cheapest choice is a bound all the while, and once a choice works it is the best.
 *
 * <p>Source: E. Moreno-Centeno, R. Karp, "The implicit hitting set approach to solve combinatorial
 * optimization problems" (2013; from memory).
 */
final class SwitchSearch {

  /**
   * What the search came to.
   *
   * @param columns the best whole solution known, or the start
   * @param least what the first measures can be at least, each where those before it are at theirs
   * @param wanted sets of switches of which at least one must be on
   * @param work units done
   */
  record Found(long[] columns, List<Long> least, Set<BitSet> wanted, double work) {}

  /** Of what is wanted so many are turned on: with fewer more is learnt, and later; measured. */
  private static final int AT_ONCE = 3;

  private final Program program;
  private final List<long[]> tiers;
  private final BitSet all;
  private final LeastCover cover;
  private final Set<BitSet> wanted = new LinkedHashSet<>();
  private final List<Long> least = new ArrayList<>();
  private List<SwitchedPart> parts = List.of();
  private long[] best;
  private Work work;
  private double done;

  /**
   * @param tiers measures that cost switches and nothing else
   * @param start a whole solution, or none
   */
  SwitchSearch(Program program, List<long[]> tiers, long[] start) {
    this.program = program;
    this.tiers = tiers;
    this.best = start;
    this.all = program.switches();
    this.cover = new LeastCover(program);
  }

  /** Searches until every measure is proven, or the work is done. */
  Found run(Work allowed) {
    work = allowed;
    List<SwitchedPart> opened = SwitchedParts.of(program);
    try {
      BitSet none = new BitSet();
      parts = opened.stream().filter(part -> !part.worksWith(none)).toList();
      boolean proven = true;
      for (int tier = 0; proven && tier < tiers.size(); tier++) {
        cover.minimise(tiers.get(tier));
        least.add(0L);
        proven = settle(tier);
        if (proven) {
          cover.limit(tiers.get(tier), least.get(tier));
        }
      }
    } finally {
      opened.forEach(SwitchedPart::close);
    }
    return new Found(best, least, wanted, done);
  }

  /** Whether the measure is proven to be at its least for the best solution. */
  private boolean settle(int tier) {
    BitSet near = on(best);
    while (goesOn()) {
      LeastCover.Cover choice = cover.find(near, work.withUnits(work.units() - done));
      done += choice.work();
      least.set(tier, Math.max(least.get(tier), choice.bound()));
      if (isProven(tier)) {
        return true;
      }
      near = choice.on();
      if (!learn(choice.on(), tier)) {
        if (!take(choice.on())) {
          return isProven(tier);
        }
        cover.workHarder();
      }
    }
    return false;
  }

  private boolean isProven(int tier) {
    return best.length > 0
        && IntStream.rangeClosed(0, tier).allMatch(t -> measure(t, best) <= least.get(t));
  }

  /**
   * Finds what is wanted beside these switches, turning the cheapest of it on each time, until
   * nothing is lacking; that may come to a better solution. Answers whether anything was lacking.
   */
  private boolean learn(BitSet choice, int tier) {
    BitSet on = (BitSet) choice.clone();
    boolean lacking = false;
    for (SwitchedPart part : parts) {
      while (goesOn() && !part.worksWith(on)) {
        BitSet some = fewest(part, on, tier);
        if (some.isEmpty()) {
          return lacking;
        }
        lacking = true;
        if (wanted.add(some)) {
          cover.want(some);
        }
        cheapestFirst(some, tier).stream().limit(AT_ONCE).forEach(on::set);
      }
      done += part.takeWork();
    }
    if (lacking && goesOn() && isBetter(on)) {
      take(on);
    }
    return lacking;
  }

  /** Switches, none of which can be left out, of which one must be on beside those that are. */
  private BitSet fewest(SwitchedPart part, BitSet on, int tier) {
    BitSet off = part.wanted(on);
    for (int column : cheapestFirst(off, tier)) {
      if (off.get(column)) {
        off.clear(column);
        if (part.worksWith(allBut(off))) {
          off.set(column);
        } else {
          off.and(part.wanted(allBut(off)));
        }
      }
    }
    // Asked once more as a whole, since what was left out on the way was so by calculation alone.
    return part.worksWith(allBut(off)) ? new BitSet() : off;
  }

  /** Takes these switches if they have a whole solution; else one of the others is wanted. */
  private boolean take(BitSet on) {
    Program fixed = program.copy();
    all.stream()
        .forEach(
            column -> fixed.boundColumn(column, on.get(column) ? 1 : 0, on.get(column) ? 1 : 0));
    long[] nothing = new long[program.columns()];
    long[] columns = whole(fixed, nothing);
    if (columns.length > 0) {
      best = best.length == 0 || isBetter(on) ? columns : best;
      return true;
    }
    WholeNumberFind find =
        WholeNumberSearch.search(
            fixed, nothing, new long[0], work.withUnits((work.units() - done) / 4));
    done += find.work();
    if (find.columns().length > 0) {
      best = best.length == 0 || isBetter(on) ? find.columns() : best;
    } else if (!find.possible()) {
      BitSet others = allBut(on);
      wanted.add(others);
      cover.want(others);
    }
    return find.columns().length > 0 || !find.possible();
  }

  private long[] whole(Program fixed, long[] costs) {
    try (LinearFace face = new LinearFace(fixed)) {
      if (Double.isNaN(face.minimise(costs, work))) {
        return new long[0];
      }
      double[] values = face.values();
      long[] columns = new long[values.length];
      for (int column = 0; column < columns.length; column++) {
        columns[column] = Math.round(values[column]);
        if (columns[column] != values[column]) {
          return new long[0];
        }
      }
      return fixed.admits(columns) ? columns : new long[0];
    }
  }

  private boolean goesOn() {
    return done < work.units() && !work.isCancelled().getAsBoolean();
  }

  private boolean isBetter(BitSet on) {
    if (best.length == 0) {
      return true;
    }
    for (long[] costs : tiers) {
      long cost = on.stream().mapToLong(column -> costs[column]).sum();
      long before = Answer.measure(costs, best);
      if (cost != before) {
        return cost < before;
      }
    }
    return false;
  }

  private long measure(int tier, long[] columns) {
    return Answer.measure(tiers.get(tier), columns);
  }

  private BitSet on(long[] columns) {
    BitSet on = new BitSet();
    if (columns.length > 0) {
      all.stream().filter(column -> columns[column] > 0).forEach(on::set);
    }
    return on;
  }

  private BitSet allBut(BitSet off) {
    BitSet on = (BitSet) all.clone();
    on.andNot(off);
    return on;
  }

  /** By what they cost by this measure or, alike by that, by the last. */
  private List<Integer> cheapestFirst(BitSet some, int tier) {
    long[] last = tiers.get(tiers.size() - 1);
    return some.stream()
        .boxed()
        .sorted(
            Comparator.comparing((Integer column) -> tiers.get(tier)[column])
                .thenComparing(column -> last[column]))
        .toList();
  }
}
