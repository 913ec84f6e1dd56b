package vestiary.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import vestiary.cluster.OneByOne;
import vestiary.problem.FieldFault;

/**
 * Brings in a list: all of it, or nothing. Every line is first held against what the cluster has,
 * so that a dry run says all that a real run would say.
 */
@ApplicationScoped
class ImportCsv {

  private final LineKeeper keeper;
  private final WriteCsv written;
  private final OneByOne turns;

  ImportCsv(LineKeeper keeper, WriteCsv written, OneByOne turns) {
    this.keeper = keeper;
    this.written = written;
    this.turns = turns;
  }

  /**
   * What came of it.
   *
   * @param lines number of good lines
   * @param unchanged how many of them say nothing but what is so already
   * @param bad what is wrong, by line; nothing was brought in unless it is empty
   * @param unknownColumns columns of the file that were not used
   * @param done whether the lines were brought in
   */
  record Outcome(
      ImportWhat what,
      int lines,
      int unchanged,
      List<BadLine> bad,
      List<String> unknownColumns,
      boolean done) {}

  /** Told as the work goes on; it may end the work by a {@link CancellationException}. */
  @FunctionalInterface
  interface Steps {
    Steps UNTOLD = lines -> {};

    /**
     * @param lines how many were worked through, each twice if the list is brought in
     */
    void at(int lines);
  }

  /** Reads a list of ours and, unless it is a dry run or a line is bad, brings it in. */
  @Transactional
  Outcome bringIn(ImportWhat what, byte[] file, DateWords dates, boolean dryRun) {
    return bringIn(what, CsvTable.parse(file, what), dates, dryRun, Steps.UNTOLD);
  }

  /**
   * Brings a list in unless it is a dry run or a line is bad. Lines that say nothing but what is so
   * already are neither held against anything nor kept.
   *
   * @param dates how date cells are understood
   */
  @Transactional
  Outcome bringIn(ImportWhat what, CsvTable table, DateWords dates, boolean dryRun, Steps steps) {
    if (!dryRun) {
      turns.waitForTurn();
    }
    Run run = new Run(what, unchanged(what, table), dryRun, steps);
    return switch (what) {
      case CLUSTER ->
          run.of(ClusterLine.read(table), ClusterLine::line, keeper::faults, keeper::keep);
      case CHURCHES ->
          run.of(ChurchLine.read(table, dates), ChurchLine::line, keeper::faults, keeper::keep);
      case PROPERS ->
          run.of(ProperLine.read(table), ProperLine::line, keeper.properFaults(), keeper::keep);
      case JOURNEYS ->
          run.of(JourneyLine.read(table), JourneyLine::line, keeper::faults, keeper::keep);
      case PEOPLE -> run.of(PersonLine.read(table), PersonLine::line, keeper::faults, keeper::keep);
      case PATTERNS ->
          run.of(PatternLine.read(table), PatternLine::line, keeper::faults, keeper::keep);
      case MASSES -> bringInMasses(run, MassLine.read(table, dates));
      case ABSENCES ->
          run.of(AbsenceLine.read(table, dates), AbsenceLine::line, keeper::faults, keeper::keep);
      case PIECES -> run.of(PieceLine.read(table), PieceLine::line, keeper::faults, keeper::keep);
      case CARE ->
          run.of(CareLine.read(table, dates), CareLine::line, keeper::faults, keeper::keep);
      case OUT -> run.of(OutLine.read(table, dates), OutLine::line, keeper::faults, keeper::keep);
    };
  }

  private Outcome bringInMasses(Run run, Reading<MassLine> reading) {
    LineKeeper.MassesAtOnce many = keeper.massesAtOnce(reading.lines());
    return run.of(reading, MassLine::line, many::faults, many::keep);
  }

  private Set<Integer> unchanged(ImportWhat what, CsvTable table) {
    WriteCsv.Known known = written.known(what);
    return table.lines().stream()
        .filter(known::has)
        .map(CsvLine::number)
        .collect(Collectors.toSet());
  }

  /**
   * One file on its way in.
   *
   * @param unchanged numbers of the lines that say nothing but what is so already
   */
  private record Run(ImportWhat what, Set<Integer> unchanged, boolean dryRun, Steps steps) {

    <T> Outcome of(
        Reading<T> reading,
        ToIntFunction<T> number,
        Function<T, List<FieldFault>> faults,
        Consumer<T> keep) {
      List<BadLine> bad = new ArrayList<>(reading.bad());
      List<T> changing = new ArrayList<>();
      Set<Integer> understood = new HashSet<>();
      int good = 0;
      int worked = 0;
      for (T line : reading.lines()) {
        steps.at(++worked);
        understood.add(number.applyAsInt(line));
        if (unchanged.contains(number.applyAsInt(line))) {
          good++;
          continue;
        }
        changing.add(line);
        List<FieldFault> found = faults.apply(line);
        found.forEach(f -> bad.add(badLine(number.applyAsInt(line), f, what)));
        good += found.isEmpty() ? 1 : 0;
        if (bad.size() > CsvTable.MOST_FAULTS) {
          break;
        }
      }
      bad.removeIf(fault -> unchanged.contains(fault.line()) && !understood.contains(fault.line()));
      bad.sort(Comparator.comparingInt(BadLine::line));
      boolean done = bad.isEmpty() && !dryRun;
      if (done) {
        worked = reading.lines().size() + unchanged.size();
        for (T line : changing) {
          keep.accept(line);
          steps.at(++worked);
        }
      }
      return new Outcome(what, good, unchanged.size(), bad, reading.unknownColumns(), done);
    }
  }

  private static BadLine badLine(int number, FieldFault fault, ImportWhat what) {
    return new BadLine(number, FieldColumns.columnOf(fault.field(), what), fault.sentence());
  }
}
