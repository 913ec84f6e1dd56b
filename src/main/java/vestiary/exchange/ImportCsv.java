package vestiary.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import vestiary.cluster.OneByOne;
import vestiary.problem.FieldFault;

/**
 * Brings in a list: all of it, or nothing. Every line is first held against what the cluster has,
 * so that a dry run says all that a real run would say.
 */
@ApplicationScoped
class ImportCsv {

  private final LineKeeper keeper;
  private final OneByOne turns;

  ImportCsv(LineKeeper keeper, OneByOne turns) {
    this.keeper = keeper;
    this.turns = turns;
  }

  /**
   * What came of it.
   *
   * @param lines number of good lines
   * @param bad what is wrong, by line; nothing was brought in unless it is empty
   * @param unknownColumns columns of the file that were not used
   * @param done whether the lines were brought in
   */
  record Outcome(
      ImportWhat what, int lines, List<BadLine> bad, List<String> unknownColumns, boolean done) {}

  /**
   * Reads a list and, unless it is a dry run or a line is bad, brings it in.
   *
   * @param dates how date cells are understood
   */
  @Transactional
  Outcome bringIn(ImportWhat what, byte[] file, DateWords dates, boolean dryRun) {
    if (!dryRun) {
      turns.waitForTurn();
    }
    return switch (what) {
      case CLUSTER ->
          run(
              what,
              ClusterLine.read(file),
              ClusterLine::line,
              keeper::faults,
              keeper::keep,
              dryRun);
      case CHURCHES ->
          run(
              what,
              ChurchLine.read(file, dates),
              ChurchLine::line,
              keeper::faults,
              keeper::keep,
              dryRun);
      case PROPERS ->
          run(
              what,
              ProperLine.read(file),
              ProperLine::line,
              keeper.properFaults(),
              keeper::keep,
              dryRun);
      case JOURNEYS ->
          run(
              what,
              JourneyLine.read(file),
              JourneyLine::line,
              keeper::faults,
              keeper::keep,
              dryRun);
      case PEOPLE ->
          run(what, PersonLine.read(file), PersonLine::line, keeper::faults, keeper::keep, dryRun);
      case PATTERNS ->
          run(
              what,
              PatternLine.read(file),
              PatternLine::line,
              keeper::faults,
              keeper::keep,
              dryRun);
      case MASSES ->
          run(
              what,
              MassLine.read(file, dates),
              MassLine::line,
              keeper::faults,
              keeper::keep,
              dryRun);
      case ABSENCES ->
          run(
              what,
              AbsenceLine.read(file, dates),
              AbsenceLine::line,
              keeper::faults,
              keeper::keep,
              dryRun);
      case PIECES ->
          run(what, PieceLine.read(file), PieceLine::line, keeper::faults, keeper::keep, dryRun);
      case CARE ->
          run(
              what,
              CareLine.read(file, dates),
              CareLine::line,
              keeper::faults,
              keeper::keep,
              dryRun);
      case OUT ->
          run(what, OutLine.read(file, dates), OutLine::line, keeper::faults, keeper::keep, dryRun);
    };
  }

  private static <T> Outcome run(
      ImportWhat what,
      Reading<T> reading,
      ToIntFunction<T> number,
      Function<T, List<FieldFault>> faults,
      Consumer<T> keep,
      boolean dryRun) {
    List<BadLine> bad = new ArrayList<>(reading.bad());
    int good = 0;
    for (T line : reading.lines()) {
      List<FieldFault> found = faults.apply(line);
      found.forEach(f -> bad.add(badLine(number.applyAsInt(line), f, what)));
      good += found.isEmpty() ? 1 : 0;
      if (bad.size() > CsvTable.MOST_FAULTS) {
        break;
      }
    }
    bad.sort(Comparator.comparingInt(BadLine::line));
    boolean done = bad.isEmpty() && !dryRun;
    if (done) {
      reading.lines().forEach(keep);
    }
    return new Outcome(what, good, bad, reading.unknownColumns(), done);
  }

  private static BadLine badLine(int number, FieldFault fault, ImportWhat what) {
    return new BadLine(number, FieldColumns.columnOf(fault.field(), what), fault.sentence());
  }
}
