package vestiary.load;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.Score;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.planner.Effort;
import vestiary.allocation.planner.Planner;

/** Plans of a week that are proven without a search: coverage, piece by piece, one change. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class PlanBenchmark {

  /** Churches, Masses and sets; each size with plenty of sets and with few. */
  @Param({"8/60/100", "8/60/30", "40/250/500", "40/250/130"})
  public String size;

  private final Planner planner = Planner.onThisMachine();
  private Situation week;
  private Situation before;
  private Plan last;

  /** The week, and a plan of it before one Mass was added. */
  @Setup
  public void plan() {
    String[] numbers = size.split("/");
    week =
        LargeWeek.of(
            Integer.parseInt(numbers[0]),
            Integer.parseInt(numbers[1]),
            Integer.parseInt(numbers[2]));
    before = LargeWeek.withoutOneMass(week);
    last = planner.plan(before, Effort.of(0));
  }

  @Benchmark
  public Score coverage() {
    return planner.coverage(week);
  }

  @Benchmark
  public Plan everyTierPieceByPiece() {
    return planner.plan(week, Effort.byPieces());
  }

  @Benchmark
  public Plan firstPlanWithCarriages() {
    return planner.plan(week, Effort.of(0));
  }

  @Benchmark
  public Plan oneMassAdded() {
    return planner.replan(before, last, week, Effort.of(0));
  }
}
