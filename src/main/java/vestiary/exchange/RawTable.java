package vestiary.exchange;

import static vestiary.web.Speech.say;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A CSV file as it stands, before anybody knows what its columns hold. Source: RFC 4180.
 *
 * @param header what the first line says, without blanks around
 * @param lines those that are not blank, in the order of the file
 */
record RawTable(List<String> header, List<Line> lines) {

  /** More than any spreadsheet of Masses has; a page could not show them. */
  static final int MOST_COLUMNS = 200;

  RawTable {
    header = List.copyOf(header);
    lines = List.copyOf(lines);
  }

  /**
   * @param number physical line on which it begins, from 1
   * @param cells as many as there are columns at most, without blanks around
   */
  record Line(int number, List<String> cells) {
    Line {
      cells = List.copyOf(cells);
    }

    /** What stands in that column, counted from 0; empty if the line ends before. */
    String cell(int place) {
      return place < cells.size() ? cells.get(place) : "";
    }
  }

  /**
   * Reads a whole file in one pass.
   *
   * @throws BadFile if it has too many columns, or a line cannot be divided into them
   */
  static RawTable parse(CsvText text) throws BadFile {
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setDelimiter(text.separator())
            .setIgnoreEmptyLines(false)
            .setIgnoreSurroundingSpaces(true)
            .get();
    try (CSVParser parser = CSVParser.parse(new StringReader(text.text()), format)) {
      return parse(parser);
    } catch (IOException unexpected) {
      throw new UncheckedIOException(unexpected);
    }
  }

  private static RawTable parse(CSVParser parser) throws BadFile {
    Iterator<CSVRecord> records = parser.iterator();
    List<String> header = cells(next(records, 1).orElseThrow());
    if (header.size() > MOST_COLUMNS) {
      throw new BadFile(
          1,
          say(
              "The file has %,d columns; at most %d are read. Take out those that are not needed.",
              header.size(), MOST_COLUMNS));
    }
    List<Line> lines = new ArrayList<>();
    int number = nextLine(parser);
    Optional<CSVRecord> record = next(records, number);
    while (record.isPresent()) {
      if (record.get().stream().anyMatch(cell -> !cell.isBlank())) {
        lines.add(line(number, cells(record.get()), header.size()));
      }
      number = nextLine(parser);
      record = next(records, number);
    }
    return new RawTable(header, lines);
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
          say(
              "A quotation mark in the line that begins here is out of place. A cell in quotation marks must end with one, and one inside it is written twice."));
    }
  }

  private static List<String> cells(CSVRecord record) {
    return record.stream().map(String::strip).toList();
  }

  private static Line line(int number, List<String> cells, int width) throws BadFile {
    for (int place = width; place < cells.size(); place++) {
      if (!cells.get(place).isEmpty()) {
        throw new BadFile(
            number,
            say(
                "The line has %d cells and the header %d columns. A cell that holds the separator must stand in quotation marks.",
                cells.size(), width));
      }
    }
    return new Line(number, cells.subList(0, Math.min(width, cells.size())));
  }
}
