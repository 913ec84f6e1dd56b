package vestiary.exchange;

import java.util.List;

/**
 * What came of a list.
 *
 * @param lines number of good lines
 * @param unchanged how many of them say nothing but what is so already
 * @param bad what is wrong, by line
 * @param unknownColumns columns of the file that were not used
 * @param found what each event of a calendar comes to, in a sentence; none for a list
 */
record ImportResult(
    int lines, int unchanged, List<BadLine> bad, List<String> unknownColumns, List<String> found) {

  ImportResult {
    found = List.copyOf(found);
    bad = List.copyOf(bad);
    unknownColumns = List.copyOf(unknownColumns);
  }

  static ImportResult of(ImportCsv.Outcome outcome) {
    return new ImportResult(
        outcome.lines(), outcome.unchanged(), outcome.bad(), outcome.unknownColumns(), List.of());
  }

  static ImportResult of(ImportCalendar.Outcome calendar) {
    ImportCsv.Outcome outcome = calendar.outcome();
    return new ImportResult(
        outcome.lines(), outcome.unchanged(), outcome.bad(), List.of(), calendar.found());
  }
}
