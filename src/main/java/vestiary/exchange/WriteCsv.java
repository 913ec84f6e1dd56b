package vestiary.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import vestiary.web.Cell;

/**
 * Writes a list as it would be brought in: the same columns, the same words. What such a list
 * cannot say is left out, see {@link ExportWords#leftOut}. Whoever may take lists out may see all
 * that stands in them.
 */
@ApplicationScoped
@Transactional
class WriteCsv {

  private final WriteCluster cluster;
  private final WritePeople people;
  private final WriteSchedule schedule;
  private final WritePool pool;

  WriteCsv(WriteCluster cluster, WritePeople people, WriteSchedule schedule, WritePool pool) {
    this.cluster = cluster;
    this.people = people;
    this.schedule = schedule;
    this.pool = pool;
  }

  /** The whole file, the header line first. Source: RFC 4180. */
  String text(ImportWhat what) {
    StringWriter text = new StringWriter();
    try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
      printer.printRecord(what.columns().stream().map(Column::name));
      for (WrittenLine line : lines(what)) {
        printer.printRecord(line.cells(what.columns()).stream().map(Cell::harmless));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  /** The lines in the order in which they can be brought in. */
  List<WrittenLine> lines(ImportWhat what) {
    return switch (what) {
      case CLUSTER -> cluster.settings();
      case CHURCHES -> cluster.churches();
      case PROPERS -> cluster.propers();
      case JOURNEYS -> cluster.journeys();
      case PEOPLE -> people.people();
      case PATTERNS -> schedule.patterns();
      case MASSES -> schedule.masses();
      case ABSENCES -> people.absences();
      case PIECES -> pool.pieces();
      case CARE -> pool.care();
      case OUT -> pool.out();
    };
  }

  /** What the cluster has already, to tell which lines of a file ask for nothing. */
  Known known(ImportWhat what) {
    String first = what.columns().get(0).name();
    Map<String, List<WrittenLine>> byFirst = new HashMap<>();
    lines(what)
        .forEach(
            line -> byFirst.computeIfAbsent(line.cell(first), cell -> new ArrayList<>()).add(line));
    return new Known(first, byFirst);
  }

  /**
   * Lines of a list as the cluster has them.
   *
   * @param first name of the first column
   * @param byFirst the lines by what stands in it
   */
  record Known(String first, Map<String, List<WrittenLine>> byFirst) {

    /** Whether a line of a file says nothing but what is so already. */
    boolean has(CsvLine line) {
      return byFirst.getOrDefault(line.cell(first), List.of()).stream()
          .anyMatch(known -> known.says(line));
    }
  }
}
