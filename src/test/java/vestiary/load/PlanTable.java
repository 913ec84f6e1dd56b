package vestiary.load;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.PlanProof;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.planner.Effort;
import vestiary.allocation.planner.Planner;
import vestiary.allocation.solver.Solver;
import vestiary.allocation.solver.Solvers;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/**
 * Plans of one invented week, with plenty of sets and with few, beside those that a person and a
 * general planning library make of it. Run by hand. Without arguments all sizes, one program each,
 * so that each has its own peak of memory; else one size.
 */
public final class PlanTable {

  private static final Duration LONG = Duration.ofSeconds(30);

  /** Churches, Masses, sets, rounds, units of work after the first plan. */
  private static final List<String> SIZES =
      List.of(
          "8 60 100 20 20",
          "8 60 30 20 20",
          "40 250 500 5 0",
          "40 250 130 5 0",
          "150 600 2000 1 0",
          "150 600 350 1 0");

  private final String size;
  private final Situation situation;
  private final int rounds;
  private final Planner planner;

  private PlanTable(String size, Situation situation, int rounds, Solver solver) {
    this.size = size;
    this.situation = situation;
    this.rounds = rounds;
    this.planner = new Planner(solver);
  }

  /** Arguments: none, or churches, Masses, sets, rounds to warm up and measure, work, [java]. */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    if (arguments.length == 0) {
      everySize();
      return;
    }
    int[] numbers = Arrays.stream(arguments).limit(5).mapToInt(Integer::parseInt).toArray();
    boolean pure = arguments.length > 5 || !Solvers.isNative();
    String size = numbers[0] + " / " + numbers[1] + " / " + numbers[2];
    Solver solver = pure ? Solvers.pureJava() : Solvers.best();
    Situation week = LargeWeek.of(numbers[0], numbers[1], numbers[2]);
    PlanTable table = new PlanTable(size, week, numbers[3], solver);
    if (pure) {
      table.printCoverage();
    } else {
      table.print(numbers[4]);
    }
  }

  private static void everySize() throws IOException, InterruptedException {
    List<String> times = new ArrayList<>();
    List<String> plans = new ArrayList<>();
    for (String size : SIZES) {
      Path output = Files.createTempFile("plans", ".md");
      List<String> command = new ArrayList<>();
      command.add(ProcessHandle.current().info().command().orElse("java"));
      command.addAll(List.of("-Xmx6g", "-cp", System.getProperty("java.class.path")));
      command.add(PlanTable.class.getName());
      command.addAll(List.of(size.split(" ")));
      new ProcessBuilder(command)
          .redirectOutput(output.toFile())
          .redirectError(ProcessBuilder.Redirect.INHERIT)
          .start()
          .waitFor();
      for (String line : Files.readAllLines(output)) {
        if (line.startsWith("time ")) {
          times.add(line.substring(5));
        } else if (line.startsWith("plan ")) {
          plans.add(line.substring(5));
        }
      }
      Files.delete(output);
      System.err.println("done: " + size);
    }
    System.out.println(
        "| churches / Masses / sets | coverage proven | piece by piece | of it proven"
            + " | carriages, first plan | one Mass added | carriages, end | peak memory |");
    System.out.println("|---|---|---|---|---|---|---|---|");
    times.forEach(System.out::println);
    System.out.println();
    System.out.println(
        "| churches / Masses / sets | plan | unmet | steps | carriages | least | minutes | least"
            + " | time |");
    System.out.println("|---|---|---|---|---|---|---|---|---|");
    plans.forEach(System.out::println);
  }

  private void printCoverage() {
    System.out.println("coverage proven: " + median(() -> planner.coverage(situation)) + " ms");
  }

  private void print(int work) throws IOException {
    long coverage = median(() -> planner.coverage(situation));
    Plan[] plan = new Plan[1];
    long pieces = median(() -> plan[0] = planner.plan(situation, Effort.byPieces()));
    String proven = plan[0].status().id();
    long first = median(() -> plan[0] = planner.plan(situation, Effort.of(0)));
    Plan firstPlan = checked(plan[0]);
    Situation before = LargeWeek.withoutOneMass(situation);
    Plan last = planner.plan(before, Effort.of(0));
    long again = median(() -> plan[0] = planner.replan(before, last, situation, Effort.of(0)));
    checked(plan[0], situation.withLast(last.provisions()));
    long start = System.nanoTime();
    Plan best = work == 0 ? firstPlan : checked(planner.plan(situation, Effort.of(work)));
    long whole = work == 0 ? first : millis(start);
    String memory = peak();
    time(coverage, pieces, proven, first, again, work == 0 ? "–" : whole + " ms", memory);
    start = System.nanoTime();
    Map<Need, Piece> hand = new GreedyHand(situation.span()).plan();
    plan("by hand", hand, millis(start));
    plan("general library, as long", LocalSearch.plan(situation, Duration.ofMillis(whole)), whole);
    plan("general library, 30 s", LocalSearch.plan(situation, LONG), LONG.toMillis());
    plan("ours, first", firstPlan, first);
    if (work > 0) {
      plan("ours, " + work + " units more, " + best.status().id(), best, whole);
    }
  }

  private void time(Object... cells) {
    String[] units = {" ms", " ms", "", " ms", " ms", "", ""};
    StringBuilder line = new StringBuilder("time | " + size + " |");
    for (int at = 0; at < cells.length; at++) {
      line.append(' ').append(cells[at]).append(units[at]).append(" |");
    }
    System.out.println(line);
  }

  private void plan(String name, Map<Need, Piece> worn, long millis) {
    long[] levels = worn.isEmpty() ? new long[0] : Recount.of(worn, situation);
    String counted =
        levels.length == 0
            ? "none without clashes | | | | |"
            : levels(Arrays.stream(levels, 0, 3))
                + " | "
                + levels(Arrays.stream(levels, 3, 6))
                + " | "
                + levels[6]
                + " | | "
                + levels[7]
                + " |";
    System.out.println(
        "plan | " + size + " | " + name + " | " + counted + " | " + millis + " ms |");
  }

  private void plan(String name, Plan plan, long millis) {
    List<Object> cells =
        List.of(
            size,
            name,
            levels(plan.score().unmet().stream().mapToLong(Long::longValue)),
            levels(plan.score().steps().stream().mapToLong(Long::longValue)),
            plan.score().carriages(),
            plan.bounds().carriages(),
            plan.score().minutes(),
            plan.bounds().minutes(),
            millis + " ms");
    System.out.println(
        cells.stream().map(String::valueOf).collect(Collectors.joining(" | ", "plan | ", " |")));
  }

  private Plan checked(Plan plan) {
    return checked(plan, situation);
  }

  private static Plan checked(Plan plan, Situation situation) {
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

  /** What weighs most comes first: fewer of it is better, however many follow. */
  private static String levels(LongStream numbers) {
    return numbers.mapToObj(String::valueOf).collect(Collectors.joining(" + "));
  }

  private static long millis(long start) {
    return (System.nanoTime() - start) / 1_000_000;
  }

  /** Of the whole program, native memory included; of this size and before the comparison. */
  private static String peak() throws IOException {
    Path status = Path.of("/proc/self/status");
    return Files.exists(status)
        ? Files.readAllLines(status).stream()
            .filter(line -> line.startsWith("VmHWM"))
            .map(line -> Long.parseLong(line.replaceAll("\\D", "")) / 1024 + " MB")
            .findFirst()
            .orElse("unknown")
        : "unknown";
  }
}
