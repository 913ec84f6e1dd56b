package vestiary.allocation.solver;

import java.util.List;

/** A search over whole numbers by one measure after the other, the earlier ones kept by rows. */
final class TieredSearch {

  /** The search by one measure; costs are 0 or more. */
  interface BySingleMeasure {
    WholeNumberFind search(Program program, long[] costs, long[] start, Work work);
  }

  /** Of the work that is left, what one measure may take; the rest is for those after it. */
  private static final double SHARE = 0.75;

  private final Program program;
  private final List<long[]> tiers;
  private final BySingleMeasure search;
  private final long[] values;
  private final long[] bounds;
  private long[] best = new long[0];
  private double left;
  private boolean proven = true;

  TieredSearch(Program program, List<long[]> tiers, BySingleMeasure search) {
    this.program = program;
    this.tiers = tiers;
    this.search = search;
    this.values = new long[tiers.size()];
    this.bounds = new long[tiers.size()];
  }

  /**
   * @param least what the first measures can be at least, each where those before it are at theirs;
   *     there may be fewer than measures
   */
  Answer run(List<Long> least, long[] hint, Work work) {
    left = work.units();
    best = hint.length == program.columns() && program.admits(hint) ? hint : new long[0];
    if (least.size() == tiers.size() && attains(least, hint, work)) {
      return new Answer(best, values, bounds, work.units() - left);
    }
    Program narrowed = program.copy();
    long[] start = hint;
    boolean asLow = true;
    for (int tier = 0; tier < tiers.size(); tier++) {
      // What a later measure can be at least says nothing once an earlier one is not at its least.
      asLow &= proven && tier < least.size();
      long bound = asLow ? least.get(tier) : 0;
      if (!settle(narrowed, tier, bound, start, work)) {
        return Answer.none(tiers.size(), work.units() - left);
      }
      start = best;
      asLow &= tier < least.size() && values[tier] == least.get(tier);
    }
    return new Answer(best, values, bounds, work.units() - left);
  }

  /** Tries for whole values at which every measure is the least it can be. */
  private boolean attains(List<Long> least, long[] hint, Work work) {
    Program ideal = program.copy();
    for (int tier = 0; tier < least.size(); tier++) {
      ideal.limit(tiers.get(tier), least.get(tier));
    }
    WholeNumberFind find =
        search.search(ideal, new long[program.columns()], hint, work.withUnits(left / 2));
    left -= find.work();
    if (find.columns().length == 0) {
      return false;
    }
    best = find.columns();
    for (int tier = 0; tier < least.size(); tier++) {
      values[tier] = Answer.measure(tiers.get(tier), best);
      bounds[tier] = values[tier];
    }
    return true;
  }

  private boolean settle(Program narrowed, int tier, long bound, long[] start, Work work) {
    long[] costs = tiers.get(tier);
    if (best.length == 0 || Answer.measure(costs, best) > bound) {
      boolean last = tier == tiers.size() - 1;
      WholeNumberFind find =
          search.search(narrowed, costs, start, work.withUnits(last ? left : left * SHARE));
      left -= find.work();
      best = find.columns().length > 0 ? find.columns() : best;
      bound = Math.max(bound, find.bound());
    }
    if (best.length == 0) {
      return false;
    }
    values[tier] = Answer.measure(costs, best);
    bounds[tier] = proven ? Math.min(bound, values[tier]) : 0;
    proven &= bounds[tier] == values[tier];
    narrowed.limit(costs, values[tier]);
    return true;
  }
}
