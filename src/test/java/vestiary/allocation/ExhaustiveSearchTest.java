package vestiary.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/**
 * Small random cases against the search of every possibility, written anew here: every hand-out of
 * pieces to needs, and every set of needs.
 */
class ExhaustiveSearchTest {

  private static final int CASES = 6000;
  private static final int CROWDED_CASES = 1500;

  @Test
  void findings_are_true_and_complete_on_thousands_of_small_cases() {
    int shortCases = 0;
    int provedByCounting = 0;
    for (int seed = 0; seed < CASES; seed++) {
      Span span = RandomCase.small(seed);
      List<Shortage> found = Minutes.ofCluster(span);
      boolean isShort = !canServeAll(span);
      List<Set<Need>> minimal = minimalClashingSets(span);

      if (!found.isEmpty()) {
        assertTrue(isShort, "case " + seed + ": a finding, yet everybody can be served");
      }
      assertEquals(minimal.isEmpty(), found.isEmpty(), "case " + seed);
      assertEquals(union(minimal), named(found), "case " + seed);
      shortCases += isShort ? 1 : 0;
      provedByCounting += minimal.isEmpty() ? 0 : 1;
    }

    assertTrue(shortCases > CASES / 10, "only " + shortCases + " cases fall short");
    // About one shortage in two hundred needs a longer proof than counting clashing needs.
    assertTrue(provedByCounting >= 0.98 * shortCases, provedByCounting + " of " + shortCases);
  }

  @Test
  void in_crowded_cases_too_a_finding_is_there_if_any_set_proves_one() {
    int needs = 0;
    int missed = 0;
    for (int seed = 0; seed < CROWDED_CASES; seed++) {
      Span span = RandomCase.crowded(seed);
      List<Shortage> found = Minutes.ofCluster(span);
      Set<Need> expected = union(minimalClashingSets(span));

      assertEquals(expected.isEmpty(), found.isEmpty(), "case " + seed);
      assertTrue(expected.containsAll(named(found)), "case " + seed);
      needs += expected.size();
      missed += expected.size() - named(found).size();
    }

    assertTrue(missed <= needs / 1000, missed + " of " + needs + " needs are not named");
  }

  @Test
  void every_finding_at_either_level_holds_when_counted_again() {
    int findings = 0;
    for (int seed = 0; seed < CASES; seed++) {
      Span span = RandomCase.small(seed);
      for (Shortage shortage : ClashCheck.find(span)) {
        assertEquals(List.of(), ShortageProof.findObjections(shortage, span), "case " + seed);
        findings++;
      }
    }
    assertTrue(findings > CASES / 10);
  }

  @Test
  void the_order_in_which_a_span_is_given_changes_nothing() {
    for (int seed = 0; seed < 500; seed++) {
      Span span = RandomCase.small(seed);
      List<Need> needs = new ArrayList<>(span.needs());
      List<Piece> pieces = new ArrayList<>(span.pieces());
      Collections.shuffle(needs, new Random(seed));
      Collections.shuffle(pieces, new Random(seed));

      Span shuffled = new Span(needs, pieces, span.journeys(), span.policies());

      assertEquals(ClashCheck.find(span), ClashCheck.find(shuffled));
    }
  }

  private static boolean canServeAll(Span span) {
    List<Need> byStart =
        span.needs().stream().sorted(Comparator.comparing(n -> n.window().start())).toList();
    List<List<Need>> rounds = new ArrayList<>();
    span.pieces().forEach(piece -> rounds.add(new ArrayList<>()));
    return canServe(byStart, 0, rounds, span);
  }

  private static boolean canServe(List<Need> needs, int next, List<List<Need>> rounds, Span span) {
    if (next == needs.size()) {
      return true;
    }
    Need need = needs.get(next);
    for (int piece = 0; piece < rounds.size(); piece++) {
      List<Need> round = rounds.get(piece);
      boolean follows = round.isEmpty() || precedes(round.get(round.size() - 1), need, span);
      if (follows && serves(span.pieces().get(piece), need, span)) {
        round.add(need);
        boolean rest = canServe(needs, next + 1, rounds, span);
        round.remove(round.size() - 1);
        if (rest) {
          return true;
        }
      }
    }
    return false;
  }

  private static List<Set<Need>> minimalClashingSets(Span span) {
    List<Set<Need>> minimal = new ArrayList<>();
    IntStream.range(1, 1 << span.needs().size())
        .boxed()
        .sorted(Comparator.comparing(Integer::bitCount))
        .map(bits -> chosen(bits, span.needs()))
        .filter(set -> minimal.stream().noneMatch(set::containsAll))
        .filter(set -> allClash(set, span) && tooManyFor(set, span))
        .forEach(minimal::add);
    return minimal;
  }

  private static Set<Need> chosen(int bits, List<Need> needs) {
    Set<Need> chosen = new HashSet<>();
    IntStream.range(0, needs.size())
        .filter(place -> (bits >> place & 1) == 1)
        .forEach(place -> chosen.add(needs.get(place)));
    return chosen;
  }

  private static boolean allClash(Set<Need> needs, Span span) {
    return needs.stream()
        .allMatch(one -> needs.stream().noneMatch(other -> precedes(one, other, span)));
  }

  private static boolean tooManyFor(Set<Need> needs, Span span) {
    long pieces =
        span.pieces().stream()
            .filter(piece -> needs.stream().anyMatch(need -> serves(piece, need, span)))
            .count();
    return needs.size() > pieces;
  }

  private static boolean precedes(Need one, Need other, Span span) {
    if (one.church().equals(other.church())) {
      return !one.window().end().plusSeconds(300).isAfter(other.window().start());
    }
    return span.journeys()
        .find(one.church(), other.church())
        .filter(time -> !one.window().cleared().plus(time).isAfter(other.window().setOut()))
        .isPresent();
  }

  private static boolean serves(Piece piece, Need need, Span span) {
    boolean atHome = piece.home().equals(need.church());
    if (!piece.colours().contains(need.colour()) || (piece.staysHome() && !atHome)) {
      return false;
    }
    return span.journeys()
        .find(piece.home(), need.church())
        .filter(
            time ->
                piece.away().stream()
                    .allMatch(
                        away ->
                            !away.until().plus(time).isAfter(need.window().setOut())
                                || !need.window().cleared().plus(time).isAfter(away.from())))
        .isPresent();
  }

  private static Set<Need> union(List<Set<Need>> sets) {
    Set<Need> all = new HashSet<>();
    sets.forEach(all::addAll);
    return all;
  }

  private static Set<Need> named(List<Shortage> found) {
    Set<Need> all = new HashSet<>();
    found.forEach(shortage -> all.addAll(shortage.needs()));
    return all;
  }
}
