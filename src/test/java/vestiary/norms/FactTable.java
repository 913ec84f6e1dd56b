package vestiary.norms;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** A table of facts, each line with its source, which {@link Source} reads. */
final class FactTable {

  private FactTable() {}

  static List<CSVRecord> read(String name) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader reader =
        new InputStreamReader(
            FactTable.class.getResourceAsStream("/norms/" + name), StandardCharsets.UTF_8)) {
      return format.parse(reader).getRecords();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
