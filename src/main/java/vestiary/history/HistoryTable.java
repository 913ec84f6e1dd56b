package vestiary.history;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import vestiary.web.Cell;

/** Changes as a table, a line for each field that was changed. Source: RFC 4180. */
record HistoryTable(List<Change> changes) {

  /** In the order of the cells. */
  static final List<String> COLUMNS =
      List.of("at", "who", "device", "thing", "deed", "field", "before", "after");

  private static final Change.Field NO_FIELD = new Change.Field("", "", "");

  /** The whole file, the header line first. */
  String text() {
    StringWriter text = new StringWriter();
    try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
      printer.printRecord(COLUMNS);
      for (Change change : changes) {
        for (Change.Field field : change.fields().isEmpty() ? List.of(NO_FIELD) : change.fields()) {
          printer.printRecord(cells(change, field));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static List<String> cells(Change change, Change.Field field) {
    return Stream.of(
            DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(change.at()),
            change.who(),
            change.device(),
            change.thing(),
            change.deed(),
            field.name(),
            field.before(),
            field.after())
        .map(Cell::harmless)
        .toList();
  }
}
