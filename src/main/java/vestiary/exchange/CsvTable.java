package vestiary.exchange;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
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

  /** Most faults that are listed; more would not be read by anybody. */
  static final int MOST_FAULTS = 500;

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
        bad.add(new BadLine(line.number(), "", "The lines from here on were not looked at."));
        break;
      }
      Reading<T> one = parser.apply(line);
      good.addAll(one.lines());
      bad.addAll(one.bad());
    }
    return new Reading<>(good, bad, unknownColumns);
  }

  private static CsvTable parse(CsvText text, ImportWhat what) throws BadFile {
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setDelimiter(text.separator())
            .setIgnoreEmptyLines(false)
            .setIgnoreSurroundingSpaces(true)
            .get();
    try (CSVParser parser = CSVParser.parse(new StringReader(text.text()), format)) {
      return parse(parser, what);
    } catch (IOException unexpected) {
      throw new UncheckedIOException(unexpected);
    }
  }

  private static CsvTable parse(CSVParser parser, ImportWhat what) throws BadFile {
    Iterator<CSVRecord> records = parser.iterator();
    CsvHeader header = CsvHeader.parse(next(records, 1).orElseThrow(), what);
    List<CsvLine> lines = new ArrayList<>();
    int number = nextLine(parser);
    Optional<CSVRecord> record = next(records, number);
    while (record.isPresent()) {
      if (record.get().stream().anyMatch(cell -> !cell.isBlank())) {
        lines.add(line(number, record.get(), header));
      }
      number = nextLine(parser);
      record = next(records, number);
    }
    return new CsvTable(lines, List.of(), header.unknownColumns());
  }

  private static int nextLine(CSVParser parser) {
    return (int) parser.getCurrentLineNumber() + 1;
  }

  /** The next record, which begins on that line; empty at the end. */
  private static Optional<CSVRecord> next(Iterator<CSVRecord> records, int line) throws BadFile {
    try {
      return records.hasNext() ? Optional.of(records.next()) : Optional.empty();
    } catch (UncheckedIOException badlyQuoted) {
      throw new BadFile(
          line,
          "A quotation mark in the line that begins here is out of place. A cell in quotation"
              + " marks must end with one, and one inside it is written twice.");
    }
  }

  private static CsvLine line(int number, CSVRecord record, CsvHeader header) throws BadFile {
    for (int place = header.width(); place < record.size(); place++) {
      if (!record.get(place).isBlank()) {
        throw new BadFile(
            number,
            "The line has %d cells and the header %d columns. A cell that holds the separator must"
                    .formatted(record.size(), header.width())
                + " stand in quotation marks.");
      }
    }
    Map<String, String> cells = new HashMap<>();
    header.places().entrySet().stream()
        .filter(column -> column.getValue() < record.size())
        .forEach(
            column ->
                cells.put(column.getKey(), Cell.asWritten(record.get(column.getValue()).strip())));
    return new CsvLine(number, cells);
  }
}
