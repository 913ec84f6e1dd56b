package vestiary.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.allocation.Minutes.minute;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import vestiary.calendar.Colour;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.Window;

/**
 * Small random cases against the search of every possibility, written anew here: every hand-out of
 * pieces to needs, and every set of needs.
 */
class ExhaustiveSearchTest {

  private static final int CASES = 6000;
  private static final List<Colour> COLOURS = List.of(Colour.WHITE, Colour.RED, Colour.GREEN);

  @Test
  void findings_are_true_and_complete_on_thousands_of_small_cases() {
    int shortCases = 0;
    int provedByCounting = 0;
    for (int seed = 0; seed < CASES; seed++) {
      Span span = randomSpan(new Random(seed));
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
  void every_finding_at_either_level_holds_when_counted_again() {
    int findings = 0;
    for (int seed = 0; seed < CASES; seed++) {
      Span span = randomSpan(new Random(seed));
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
      Span span = randomSpan(new Random(seed));
      List<Need> needs = new ArrayList<>(span.needs());
      List<Piece> pieces = new ArrayList<>(span.pieces());
      Collections.shuffle(needs, new Random(seed));
      Collections.shuffle(pieces, new Random(seed));

      Span shuffled = new Span(needs, pieces, span.journeys(), span.policies());

      assertEquals(ClashCheck.find(span), ClashCheck.find(shuffled));
    }
  }

  private static Span randomSpan(Random random) {
    List<Journey> roads = new ArrayList<>();
    for (int one = 1; one <= 3; one++) {
      for (int other = one + 1; other <= 3; other++) {
        if (random.nextInt(12) > 0) {
          int minutes = 5 + random.nextInt(60);
          roads.addAll(Minutes.roads(minutes, Minutes.church(one), Minutes.church(other)));
        }
      }
    }
    List<Need> needs =
        IntStream.range(0, 2 + random.nextInt(5)).mapToObj(n -> randomNeed(n, random)).toList();
    List<Piece> pieces =
        IntStream.range(0, 1 + random.nextInt(4)).mapToObj(n -> randomPiece(n, random)).toList();
    return new Span(needs, pieces, Journeys.of(roads), Minutes.withTurn(5));
  }

  private static Need randomNeed(int mass, Random random) {
    int start = 60 + 15 * random.nextInt(24);
    int length = 30 + 15 * random.nextInt(3);
    Window window =
        new Window(
            minute(start - 30), minute(start), minute(start + length), minute(start + length + 15));
    return Minutes.need(mass, randomChurch(random), window, COLOURS.get(random.nextInt(3)));
  }

  private static Piece randomPiece(int number, Random random) {
    List<Colour> colours = new ArrayList<>(COLOURS);
    colours.removeIf(colour -> random.nextInt(3) == 0);
    Colour[] serves =
        colours.isEmpty() ? new Colour[] {Colour.WHITE} : colours.toArray(Colour[]::new);
    Piece piece = Minutes.piece("p" + number, randomChurch(random), serves);
    if (random.nextInt(5) == 0) {
      return new Piece(
          piece.code(), piece.kind(), piece.colours(), piece.home(), true, "", List.of());
    }
    int from = 60 + random.nextInt(300);
    return random.nextInt(4) == 0
        ? Minutes.away(piece, from, from + 30 + random.nextInt(120))
        : piece;
  }

  private static ChurchId randomChurch(Random random) {
    return Minutes.church(1 + random.nextInt(3));
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
