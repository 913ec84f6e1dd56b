package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import vestiary.calendar.Colour;
import vestiary.calendar.Leave;
import vestiary.calendar.MassKind;
import vestiary.calendar.MassRuling;
import vestiary.calendar.Term;

/**
 * Facts about single Masses, in {@code norms/masses.csv}: whether each may be said, and in which
 * colour, with the published page or the norm it stands on.
 */
class PublishedMassesTest {

  private static final List<CSVRecord> FACTS = FactTable.read("masses.csv");

  @TestFactory
  Stream<DynamicTest> masses_are_as_published() {
    return FACTS.stream().map(fact -> DynamicTest.dynamicTest(name(fact), () -> check(fact)));
  }

  @AfterAll
  static void print_sources() {
    FactTable.printSources("masses", FACTS);
  }

  private static String name(CSVRecord fact) {
    return String.join(" ", fact.toList().subList(0, 8)) + ": " + fact.get("source");
  }

  private static void check(CSVRecord fact) {
    MassRuling ruling =
        new ChurchOfFact(fact.get("calendar"), fact.get("options"))
            .liturgicalCalendar()
            .ruling(
                LocalDateTime.parse(fact.get("start")),
                Term.find(MassKind.class, fact.get("kind")).orElseThrow(),
                fact.get("votive_of"),
                Term.find(Leave.class, fact.get("leave")).orElseThrow());
    assertEquals(fact.get("expected"), answer(ruling, fact.get("check")), ruling::toString);
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
