package vestiary.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import vestiary.allocation.plan.Situation;

/** How far the planner goes, in its units of work, so that the same press gives the same plan. */
final class Workload {

  private static final int SMALL_DAYS = 8;
  private static final int SMALL_NEEDS = 150;

  /** A unit is about a second of one core: somebody waits for a week of a few churches. */
  private static final double SMALL = 10;

  private static final double LARGE = 60;

  private Workload() {}

  static double of(Situation situation, LocalDate first, LocalDate last) {
    boolean small =
        ChronoUnit.DAYS.between(first, last) < SMALL_DAYS
            && situation.span().needs().size() <= SMALL_NEEDS;
    return small ? SMALL : LARGE;
  }
}
