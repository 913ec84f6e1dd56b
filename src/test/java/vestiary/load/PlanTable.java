package vestiary.load;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import vestiary.allocation.Span;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.PlanProof;
import vestiary.allocation.plan.Score;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.planner.Effort;
import vestiary.allocation.planner.Planner;
import vestiary.allocation.solver.Solver;
import vestiary.allocation.solver.Solvers;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;

/**
 * Plans of one invented week, with plenty of sets and with few, beside one made by hand. Run by
 * hand with churches, Masses, sets, rounds and units of work; prints a table.
 */
public final class PlanTable {

  private static final long SEED = 20270607;

  private final Situation situation;
  private final int rounds;

  private PlanTable(Situation situation, int rounds) {
    this.situation = situation;
    this.rounds = rounds;
  }

  /** Arguments: churches, Masses, sets, rounds to warm up and measure, units of work, [java]. */
  public static void main(String[] arguments) throws IOException {
    int[] numbers = new int[5];
    for (int at = 0; at < 5; at++) {
      numbers[at] = Integer.parseInt(arguments[at]);
    }
    Span span = RandomWeek.of(numbers[0], numbers[1], numbers[2], SEED);
    boolean pure = arguments.length > 5 || !Solvers.isNative();
    Solver solver = pure ? Solvers.pureJava() : Solvers.best();
    new PlanTable(Situation.of(span), numbers[3]).print(new Planner(solver), numbers[4], pure);
  }

  private void print(Planner planner, int work, boolean pure) throws IOException {
    System.out.println("| what | unmet | steps | carriages | minutes | least carriages | ms |");
    System.out.println("|---|---|---|---|---|---|---|");
    long start = System.nanoTime();
    String byHand = new GreedyHand(situation.span()).plan();
    System.out.println("| by hand | " + byHand + " | | " + millis(start) + " |");
    Score[] covered = new Score[1];
    long coverage = median(() -> covered[0] = planner.coverage(situation));
    System.out.println(
        "| coverage | "
            + sum(covered[0].unmet())
            + " | "
            + sum(covered[0].steps())
            + " | | | | "
            + coverage
            + " |");
    if (!pure) {
      printJourneys(planner, work);
    }
    System.out.println("peak memory: " + peak());
  }

  private void printJourneys(Planner planner, int work) {
    Plan[] plan = new Plan[1];
    long pieces = median(() -> plan[0] = planner.plan(situation, Effort.byPieces()));
    System.out.println(row("piece by piece, " + plan[0].status().id(), plan[0], pieces));
    long first = median(() -> plan[0] = planner.plan(situation, Effort.of(0)));
    System.out.println(row("carriages, first plan", checked(plan[0]), first));
    Situation before = withoutOneMass();
    Plan last = planner.plan(before, Effort.of(0));
    long again = median(() -> plan[0] = planner.replan(before, last, situation, Effort.of(0)));
    System.out.println(row("one Mass added, planned anew", checked(plan[0]), again));
    if (work > 0) {
      long start = System.nanoTime();
      Plan best = planner.plan(situation, Effort.of(work));
      String name = "carriages, " + work + " units more, " + best.status().id();
      System.out.println(row(name, checked(best), millis(start)));
    }
  }

  private Situation withoutOneMass() {
    Span span = situation.span();
    MassId mass = span.needs().get(0).mass();
    List<Need> others = span.needs().stream().filter(need -> !need.mass().equals(mass)).toList();
    return situation.with(new Span(others, span.pieces(), span.journeys(), span.policies()));
  }

  private Plan checked(Plan plan) {
    List<String> objections = PlanProof.findObjections(plan, situation);
    if (!objections.isEmpty()) {
      throw new IllegalStateException(objections.get(0));
    }
    return plan;
  }

  private long median(Supplier<Object> work) {
    List<Long> times = new ArrayList<>();
    for (int round = 0; round < 2 * rounds; round++) {
      long start = System.nanoTime();
      work.get();
      if (round >= rounds) {
        times.add(millis(start));
      }
    }
    return times.stream().sorted().toList().get(times.size() / 2);
  }

  private static String row(String name, Plan plan, long millis) {
    Score score = plan.score();
    return "| "
        + name
        + " | "
        + sum(score.unmet())
        + " | "
        + sum(score.steps())
        + " | "
        + score.carriages()
        + " | "
        + score.minutes()
        + " | "
        + plan.bounds().carriages()
        + " | "
        + millis
        + " |";
  }

  private static long sum(List<Long> numbers) {
    return numbers.stream().mapToLong(Long::longValue).sum();
  }

  private static long millis(long start) {
    return (System.nanoTime() - start) / 1_000_000;
  }

  private static String peak() throws IOException {
    Path status = Path.of("/proc/self/status");
    return Files.exists(status)
        ? Files.readAllLines(status).stream().filter(l -> l.startsWith("VmHWM")).findFirst().get()
        : "unknown";
  }
}
