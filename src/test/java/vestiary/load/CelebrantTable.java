package vestiary.load;

import java.time.Duration;
import java.util.List;
import java.util.stream.LongStream;
import vestiary.allocation.celebrant.DivideMasses;
import vestiary.allocation.celebrant.InventedPriests;
import vestiary.allocation.celebrant.Proposal;
import vestiary.allocation.celebrant.ProposalProof;
import vestiary.allocation.celebrant.Question;
import vestiary.allocation.solver.Solvers;
import vestiary.allocation.solver.Work;

/**
 * How long it takes to divide an invented month of Masses among its priests. Run by hand: priests,
 * churches, Masses, rounds.
 */
public final class CelebrantTable {

  private CelebrantTable() {}

  public static void main(String[] arguments) {
    List<Integer> size =
        arguments.length == 0
            ? List.of(10, 12, 250, 5)
            : List.of(arguments).stream().map(Integer::valueOf).toList();
    for (int seed = 1; seed <= size.get(3); seed++) {
      Question question = new InventedPriests(seed).month(size.get(0), size.get(1), size.get(2));
      long start = System.nanoTime();
      Proposal proposal = DivideMasses.divide(question, Solvers.best(), Work.of(10));
      Duration time = Duration.ofNanos(System.nanoTime() - start);
      System.out.printf(
          "%d: %,d ms, %s, %s%n   bounds %s, objections %s%n",
          seed,
          time.toMillis(),
          proposal.proven() ? "proven" : "not proven",
          proposal.values(),
          proposal.bounds(),
          ProposalProof.findObjections(question, proposal));
    }
    LongStream.of(Runtime.getRuntime().totalMemory())
        .forEach(bytes -> System.out.printf("Memory %,d MB%n", bytes >> 20));
  }
}
