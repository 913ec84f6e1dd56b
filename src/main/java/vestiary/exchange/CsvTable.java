package vestiary.exchange;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import vestiary.web.Cell;

/**
 * A CSV file (RFC 4180) as header and numbered lines. Either it has faults, and then no lines are
 * offered, or every line has the columns its header promises.
 *
 * @param lines those that are not blank, in the order of the file
 * @param faults why the file as a whole cannot be read; empty if it can
 * @param unknownColumns columns that are not used, as written in the header
 */
record CsvTable(List<CsvLine> lines, List<BadLine> faults, List<String> unknownColumns) {

  /** Most faults that are listed: one for each line of the longest file. */
  static final int MOST_FAULTS = CsvText.MOST_LINES;

  CsvTable {
    lines = List.copyOf(lines);
    faults = List.copyOf(faults);
    unknownColumns = List.copyOf(unknownColumns);
  }

  /** Reads a whole file in one pass. */
  static CsvTable parse(byte[] file, ImportWhat what) {
    try {
      return parse(CsvText.parse(file), what);
    } catch (BadFile bad) {
      return new CsvTable(List.of(), List.of(bad.fault()), List.of());
    }
  }

  /** Every line read with the given parser, in order; stops at {@link #MOST_FAULTS} bad ones. */
  <T> Reading<T> read(Function<CsvLine, Reading<T>> parser) {
    List<T> good = new ArrayList<>();
    List<BadLine> bad = new ArrayList<>(faults);
    for (CsvLine line : lines) {
      if (bad.size() >= MOST_FAULTS) {
        bad.add(new BadLine(line.number(), "", say("The lines from here on were not looked at.")));
        break;
      }
      Reading<T> one = parser.apply(line);
      good.addAll(one.lines());
      bad.addAll(one.bad());
    }
    return new Reading<>(good, bad, unknownColumns);
  }

  private static CsvTable parse(CsvText text, ImportWhat what) throws BadFile {
    RawTable table = RawTable.parse(text);
    CsvHeader header = CsvHeader.parse(table.header(), what);
    return new CsvTable(
        table.lines().stream().map(line -> line(line, header)).toList(),
        List.of(),
        header.unknownColumns());
  }

  private static CsvLine line(RawTable.Line line, CsvHeader header) {
    Map<String, String> cells = new HashMap<>();
    header
        .places()
        .forEach(
            (column, place) -> {
              if (place < line.cells().size()) {
                cells.put(column, Cell.asWritten(line.cell(place)));
              }
            });
    return new CsvLine(line.number(), cells);
  }
}
