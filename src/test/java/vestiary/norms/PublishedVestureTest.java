package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import vestiary.calendar.Colour;
import vestiary.calendar.Term;
import vestiary.vesting.ColourMatch;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;

/**
 * Which colour of chasuble or dalmatic may be worn for which, in {@code norms/vesture.csv}: by
 * itself, as a festive or customary stand-in, as a lawful substitute, or not. Sources: General
 * Instruction of the Roman Missal (GIRM) 338, 346; Redemptionis Sacramentum (RS, 2004) 124, 127.
 */
@ExtendWith(OneTally.class)
class PublishedVestureTest {

  @TestFactory
  Stream<DynamicTest> vestments_serve_as_published(FactTally tally) {
    return FactTable.read("vesture.csv").stream()
        .map(fact -> DynamicTest.dynamicTest(name(fact), () -> check(fact, tally)));
  }

  private static String name(CSVRecord fact) {
    return String.join(" ", fact.toList());
  }

  private static void check(CSVRecord fact, FactTally tally) {
    for (boolean festive : days(fact.get("day"))) {
      assertEquals(fact.get("expected"), answer(need(fact, festive), colour(fact.get("offered"))));
    }
    tally.add(new Source(fact.get("source")));
  }

  /** Whether a feast, for each kind of day that the fact holds on. */
  private static boolean[] days(String day) {
    return switch (day) {
      case "feast" -> new boolean[] {true};
      case "other" -> new boolean[] {false};
      case "any" -> new boolean[] {true, false};
      default -> throw new IllegalArgumentException("No such day: " + day);
    };
  }

  private static String answer(Need need, Colour offered) {
    ColourMatch match = ColourMatch.of(List.of(offered), need.colour(), need.festive());
    if (match.serves()) return match.name().toLowerCase(Locale.ROOT);
    return need.isLawfullyServedBy(List.of(offered)) ? "substitute" : "no";
  }

  /** What the wearer has over stole and alb, at a Mass in this colour. */
  private static Need need(CSVRecord fact, boolean festive) {
    Role wearer = Term.find(Role.class, fact.get("wearer")).orElseThrow();
    List<Need> needs =
        Vested.needs(Vested.mass(colour(fact.get("prescribed")), festive, Vested.ministers(1, 1)));
    return Vested.of(wearer, needs).stream()
        .filter(need -> need.kind() == PieceKind.CHASUBLE || need.kind() == PieceKind.DALMATIC)
        .findFirst()
        .orElseThrow();
  }

  private static Colour colour(String id) {
    return Term.find(Colour.class, id).orElseThrow();
  }
}
