package vestiary.ordo;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import vestiary.calendar.Celebration;
import vestiary.calendar.Day;
import vestiary.calendar.LocalName;
import vestiary.calendar.Term;
import vestiary.cluster.Church;
import vestiary.web.Cell;
import vestiary.web.English;

/**
 * An ordo as a table: a line for every day, and below it one for each church that keeps it
 * otherwise. Several values of a cell stand between bars, as in lists that are brought in. Source:
 * RFC 4180.
 */
final class OrdoTable {

  /** In the order of the cells. */
  static final List<String> COLUMNS =
      List.of(
          "date",
          "weekday",
          "season",
          "week",
          "sundayCycle",
          "weekdayCycle",
          "church",
          "celebration",
          "name",
          "rank",
          "precedence",
          "colours",
          "obligation",
          "evening",
          "alsoOffered",
          "omitted");

  private final Ordo ordo;

  OrdoTable(Ordo ordo) {
    this.ordo = ordo;
  }

  /** The whole file, the header line first. */
  String text() {
    StringWriter text = new StringWriter();
    try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
      printer.printRecord(COLUMNS);
      for (Day day : ordo.days().all()) {
        printer.printRecord(cells(day, ordo.of()));
        for (Ordo.OwnDay own : ordo.own(day.date())) {
          printer.printRecord(cells(own.day(), List.of(own.church())));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private List<String> cells(Day day, List<Church> church) {
    Celebration kept = day.kept();
    return Stream.of(
            day.date().toString(),
            English.weekday(day.date()),
            day.season().id(),
            String.valueOf(day.week()),
            day.sundayCycle().name(),
            day.weekdayCycle().name(),
            church.stream().map(Church::slug).collect(Collectors.joining()),
            kept.id(),
            name(kept.name()),
            kept.rank().id(),
            String.valueOf(kept.precedence().number()),
            kept.colours().stream().map(Term::id).collect(Collectors.joining("|")),
            day.obligation() ? "yes" : "no",
            day.evening().tomorrow() ? "tomorrow" : "today",
            names(day.celebrations().stream().skip(1).map(Celebration::name)),
            names(day.omitted().stream().map(o -> o.name())))
        .map(Cell::harmless)
        .toList();
  }

  private String names(Stream<LocalName> several) {
    return several.map(this::name).collect(Collectors.joining("|"));
  }

  private String name(LocalName name) {
    return name.in(ordo.locale());
  }
}
