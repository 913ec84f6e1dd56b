package vestiary.norms;

import static java.util.stream.Collectors.groupingBy;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;
import vestiary.calendar.Term;
import vestiary.vesting.FurtherMinisters;
import vestiary.vesting.KeptKinds;
import vestiary.vesting.Ministers;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Presider;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.vesting.VestedMass;
import vestiary.vesting.VestingNorms;

/**
 * What everybody wears at every kind of liturgy, in {@code norms/vesture-by-liturgy.csv}: who,
 * which piece in which colour, whether it must be, what may be worn instead, and the norm. Nothing
 * is asked for beside what stands there.
 */
@ExtendWith(OneTally.class)
class VestureByLiturgyTest {

  @TestFactory
  Stream<DynamicTest> every_minister_of_every_liturgy_vests_by_the_norm(FactTally tally) {
    Set<String> counted = new HashSet<>();
    return FactTable.read("vesture-by-liturgy.csv").stream()
        .collect(groupingBy(VestureByLiturgyTest::liturgy, LinkedHashMap::new, Collectors.toList()))
        .entrySet()
        .stream()
        .map(l -> DynamicTest.dynamicTest(l.getKey(), () -> check(l.getValue(), counted, tally)));
  }

  private static String liturgy(CSVRecord fact) {
    return Stream.of("liturgy", "presider", "prescribed", "company", "asked")
        .map(fact::get)
        .filter(word -> !word.isEmpty())
        .collect(Collectors.joining(", "));
  }

  private static void check(List<CSVRecord> facts, Set<String> counted, FactTally tally) {
    Set<String> published =
        facts.stream()
            .map(VestureByLiturgyTest::line)
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> asked =
        needs(facts.get(0)).stream()
            .map(VestureByLiturgyTest::line)
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(String.join("\n", published), String.join("\n", asked));
    // A norm that holds at many liturgies is one published fact.
    facts.stream()
        .filter(fact -> counted.add(line(fact)))
        .forEach(fact -> tally.add(new Source(fact.get("source"))));
  }

  private static String line(CSVRecord fact) {
    return Stream.of("wearer", "piece", "worn", "weight", "instead", "source")
        .map(fact::get)
        .collect(Collectors.joining(" | "));
  }

  private static String line(Need need) {
    return String.join(
        " | ",
        need.role().id(),
        need.kind().id(),
        need.colour().id(),
        need.isMust() ? "must" : "may",
        need.ladder().stream().map(Step::id).collect(Collectors.joining(";")),
        need.source());
  }

  private static List<Need> needs(CSVRecord fact) {
    List<String> asked = words(fact.get("asked"));
    VestedMass mass =
        Vested.liturgy(
            term(MassKind.class, fact.get("liturgy")),
            term(Colour.class, fact.get("prescribed")),
            ministers(fact, asked));
    return VestingNorms.needsOf(
        mass, Vested.policies(true, asked.contains("pontificals")), kept(asked));
  }

  private static Ministers ministers(CSVRecord fact, List<String> asked) {
    List<String> company = words(fact.get("company"));
    return new Ministers(
        term(Presider.class, fact.get("presider")),
        number(company, "concelebrant"),
        number(company, "deacon"),
        List.of(),
        Role.FURTHER.stream()
            .filter(role -> number(company, role.id()) > 0)
            .map(role -> new FurtherMinisters(role, number(company, role.id()), List.of()))
            .toList(),
        Ministers.BESIDES.stream()
            .filter(kind -> asked.contains(kind.id()))
            .collect(Collectors.toSet()));
  }

  private static KeptKinds kept(List<String> asked) {
    List<PieceKind> albs = List.of(PieceKind.ALB, PieceKind.AMICE, PieceKind.CINCTURE);
    return Vested.kept(
        Stream.of(PieceKind.values())
            .filter(k -> asked.contains(k.id()) || asked.contains("albs") && albs.contains(k))
            .toList());
  }

  private static int number(List<String> company, String who) {
    return company.stream()
        .filter(entry -> entry.startsWith(who + " "))
        .mapToInt(entry -> Integer.parseInt(entry.substring(who.length() + 1)))
        .sum();
  }

  private static List<String> words(String cell) {
    return Arrays.stream(cell.split(";")).filter(word -> !word.isEmpty()).toList();
  }

  private static <T extends Enum<T> & Term> T term(Class<T> type, String id) {
    return Term.find(type, id.toLowerCase(Locale.ROOT)).orElseThrow();
  }
}
