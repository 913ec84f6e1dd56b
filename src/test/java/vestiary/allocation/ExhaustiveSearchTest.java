package vestiary.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
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
  private static final int UNFRIENDLY_CASES = 3000;

  @Test
  void of_small_cases_every_need_of_a_clashing_set_is_named() {
    for (int seed = 0; seed < CASES; seed++) {
      Span span = RandomCase.small(seed);

      assertEquals(
          union(minimalClashingSets(span)), named(Minutes.ofCluster(span)), "case " + seed);
    }
  }

  @Test
  void in_crowded_cases_too_a_clashing_set_is_found_if_there_is_one() {
    int needs = 0;
    int missed = 0;
    for (int seed = 0; seed < CROWDED_CASES; seed++) {
      Span span = RandomCase.crowded(seed);
      Set<Need> found = named(Minutes.ofCluster(span));
      Set<Need> expected = union(minimalClashingSets(span));

      assertEquals(expected.isEmpty(), found.isEmpty(), "case " + seed);
      assertTrue(expected.containsAll(found), "case " + seed);
      needs += expected.size();
      missed += expected.size() - found.size();
    }

    assertTrue(missed <= needs / 1000, missed + " of " + needs + " needs are not named");
  }

  @Test
  void a_shortage_of_small_or_crowded_days_is_never_missed_and_never_invented() {
    for (int seed = 0; seed < CASES; seed++) {
      assertNoneMissed(RandomCase.small(seed), "small case " + seed);
    }
    for (int seed = 0; seed < CROWDED_CASES; seed++) {
      assertNoneMissed(RandomCase.crowded(seed), "crowded case " + seed);
    }
  }

  /**
   * Pieces that serve any subset of six colours make longer proofs common: without them, about one
   * shortage in three hundred would not be found.
   */
  @Test
  void nor_is_one_missed_where_pieces_serve_this_and_that() {
    Map<CertificateKind, Integer> kinds = new EnumMap<>(CertificateKind.class);
    for (int seed = 0; seed < UNFRIENDLY_CASES; seed++) {
      assertNoneMissed(RandomCase.unfriendly(seed), "unfriendly case " + seed)
          .forEach(shortage -> kinds.merge(shortage.certificate().kind(), 1, Integer::sum));
    }

    assertTrue(kinds.get(CertificateKind.ALL_CLASH) > UNFRIENDLY_CASES / 4, kinds.toString());
    assertTrue(kinds.containsKey(CertificateKind.CHAINS), kinds.toString());
    assertTrue(kinds.containsKey(CertificateKind.FORCED_CHOICES), kinds.toString());
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

  /** Those who go without are all that have to: the others can be served. */
  private static List<Shortage> assertNoneMissed(Span span, String which) {
    List<Shortage> found = Minutes.ofCluster(span);
    AllWays ways = new AllWays(span);
    List<Need> rest = new ArrayList<>(span.needs());
    found.forEach(shortage -> rest.removeAll(shortage.unserved()));

    assertEquals(ways.canServeAll(), found.isEmpty(), which);
    assertTrue(ways.canServe(rest), which + ": a shortage is left");
    for (Shortage shortage : found) {
      assertEquals(List.of(), ShortageProof.findObjections(shortage, span), which);
      assertFalse(ways.canServe(shortage.needs()), which + ": a shortage is invented");
    }
    return found;
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
        .allMatch(one -> needs.stream().noneMatch(other -> AllWays.precedes(one, other, span)));
  }

  private static boolean tooManyFor(Set<Need> needs, Span span) {
    long pieces =
        span.pieces().stream()
            .filter(piece -> needs.stream().anyMatch(need -> AllWays.serves(piece, need, span)))
            .count();
    return needs.size() > pieces;
  }

  private static Set<Need> union(List<Set<Need>> sets) {
    Set<Need> all = new HashSet<>();
    sets.forEach(all::addAll);
    return all;
  }

  private static Set<Need> named(List<Shortage> found) {
    Set<Need> all = new HashSet<>();
    found.stream().filter(Shortage::allClash).forEach(shortage -> all.addAll(shortage.needs()));
    return all;
  }
}
