package vestiary.norms;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** A table of published facts, each line with its source. */
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

  /** Prints how many facts stand on each source. */
  static void printSources(String name, List<CSVRecord> facts) {
    Map<String, Integer> counts = new TreeMap<>();
    facts.forEach(fact -> counts.merge(fact.get("source"), 1, Integer::sum));
    System.out.println(name + ": " + facts.size() + " facts from " + counts.size() + " sources");
    counts.forEach((source, count) -> System.out.printf("%5d  %s%n", count, source));
  }
}
