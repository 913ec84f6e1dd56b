package vestiary.load;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import vestiary.allocation.ClashCheck;
import vestiary.allocation.Shortage;
import vestiary.allocation.ShortageProof;
import vestiary.allocation.Span;

/**
 * How long the check of one week takes: 8 churches, 60 Masses and about 120 vested persons, then
 * four, sixteen and 64 times as many of everything; with plenty of sets and with few.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ClashCheckBenchmark {

  @Param({"1", "4", "16", "64"})
  public int times;

  @Param({"100", "40"})
  public int setsOfEightChurches;

  private Span span;
  private List<Shortage> found;

  @Setup
  public void makeWeek() {
    span = RandomWeek.of(8 * times, 60 * times, setsOfEightChurches * times, 20270607);
    found = ClashCheck.find(span);
  }

  @Benchmark
  public List<Shortage> find() {
    return ClashCheck.find(span);
  }

  @Benchmark
  public long proveAgain() {
    ShortageProof proof = ShortageProof.of(span);
    return found.stream().filter(s -> proof.findObjections(s).isEmpty()).count();
  }

  /** Runs it, given the test classes on the class path. */
  public static void main(String[] arguments) throws RunnerException {
    new Runner(new OptionsBuilder().include(ClashCheckBenchmark.class.getName()).build()).run();
  }
}
