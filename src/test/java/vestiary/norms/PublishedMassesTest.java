package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import vestiary.calendar.Colour;
import vestiary.calendar.Leave;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.MassKind;
import vestiary.calendar.MassRuling;
import vestiary.calendar.Term;

/**
 * Facts about single Masses, in {@code norms}: whether each may be said, in which colour, and which
 * Mass an hour points to, with the published page or the norm it stands on.
 */
@ExtendWith(OneTally.class)
class PublishedMassesTest {

  private static final List<String> TABLES =
      List.of("masses.csv", "rites.csv", "scrutinies-and-evenings.csv");

  @TestFactory
  Stream<DynamicTest> masses_are_as_published(FactTally tally) {
    return TABLES.stream()
        .flatMap(table -> FactTable.read(table).stream())
        .map(fact -> DynamicTest.dynamicTest(name(fact), () -> check(fact, tally)));
  }

  private static String name(CSVRecord fact) {
    return String.join(" ", fact.toList().subList(0, 8)) + ": " + fact.get("source");
  }

  private static void check(CSVRecord fact, FactTally tally) {
    LiturgicalCalendar church =
        new ChurchOfFact(fact.get("calendar"), fact.get("options")).liturgicalCalendar();
    LocalDateTime start = LocalDateTime.parse(fact.get("start"));

    String answer =
        fact.get("check").equals("kind-at-this-hour")
            ? church.kindAt(start).id()
            : answer(ruling(church, start, fact), fact.get("check"));

    assertEquals(fact.get("expected"), answer);
    tally.add(new Source(fact.get("source")));
  }

  private static MassRuling ruling(LiturgicalCalendar church, LocalDateTime start, CSVRecord fact) {
    return church.ruling(
        start,
        Term.find(MassKind.class, fact.get("kind")).orElseThrow(),
        fact.get("votive_of"),
        Term.find(Leave.class, fact.get("leave")).orElseThrow());
  }

  private static String answer(MassRuling ruling, String check) {
    List<Colour> colours = ruling.options().get(0).colours();
    return switch (check) {
      case "verdict" -> ruling.permission().verdict().id();
      case "colours" -> colours.stream().map(Colour::id).collect(Collectors.joining("|"));
      case "first-colour" -> colours.get(0).id();
      case "day" -> ruling.day().date().toString();
      default -> throw new IllegalArgumentException("No such check: " + check);
    };
  }
}
