package vestiary.allocation;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.calendar.Colour;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;

/**
 * Checks findings again by comparing pairs, counting and following, as a person would with pencil
 * and paper. It shares no step with the search that found them.
 */
public final class ShortageProof {

  private record Colours(PieceKind kind, Colour colour, boolean festive) {}

  private final Span span;
  private final Reckoning reckoning;
  private final Set<Need> asked;
  private final Map<PieceKind, List<Piece>> pieces;
  private final Map<List<Colours>, List<Piece>> ofColours = new HashMap<>();

  private ShortageProof(Span span) {
    this.span = span;
    this.reckoning = new Reckoning(span);
    this.asked = new HashSet<>(span.needs());
    this.pieces =
        span.pieces().stream()
            .sorted(Comparator.comparing(Piece::code))
            .collect(
                Collectors.groupingBy(
                    Piece::kind, () -> new EnumMap<>(PieceKind.class), Collectors.toList()));
  }

  /** Proves findings of this span. */
  public static ShortageProof of(Span span) {
    return new ShortageProof(span);
  }

  /** What is wrong with a finding, in words; empty if it holds. */
  public static List<String> findObjections(Shortage shortage, Span span) {
    return of(span).findObjections(shortage);
  }

  /** What is wrong with a finding, in words; empty if it holds. */
  public List<String> findObjections(Shortage shortage) {
    return findObjections(
        shortage,
        piece ->
            shortage.needs().stream()
                .filter(need -> need.isServedBy(piece.colours()))
                .anyMatch(need -> span.isThere(piece, need)));
  }

  /**
   * The same where pieces of a local finding are elsewhere than at home.
   *
   * @param isThere whether a piece is at the church of the finding
   */
  public List<String> findObjections(Shortage shortage, Predicate<Piece> isThere) {
    Check check = new Check(shortage, isThere);
    check.checkNeeds();
    check.checkStock();
    check.checkCertificate();
    check.checkUnserved();
    check.checkExhausted();
    check.checkKind();
    return List.copyOf(check.objections);
  }

  /** The pieces of a kind that have a colour which one of the needs asks for. */
  private List<Piece> ofColours(PieceKind kind, List<Need> asks) {
    List<Colours> asked =
        asks.stream().map(n -> new Colours(kind, n.colour(), n.festive())).distinct().toList();
    return ofColours.computeIfAbsent(
        asked,
        unknown ->
            pieces.getOrDefault(kind, List.of()).stream()
                .filter(piece -> asks.stream().anyMatch(n -> n.isServedBy(piece.colours())))
                .toList());
  }

  private final class Check {

    private final Shortage shortage;
    private final Predicate<Piece> isThere;
    private final List<String> objections = new ArrayList<>();

    Check(Shortage shortage, Predicate<Piece> isThere) {
      this.shortage = shortage;
      this.isThere = isThere;
    }

    void checkNeeds() {
      require(asked.containsAll(shortage.needs()), "a need is not asked for");
      require(Set.copyOf(shortage.needs()).size() == shortage.needed(), "a need stands twice");
      require(
          shortage.needs().stream().map(Need::kind).distinct().count() == 1,
          "the needs are of several kinds");
      require(
          shortage.level() == Level.CLUSTER
              || shortage.needs().stream().map(Need::church).distinct().count() == 1,
          "a local finding has needs of several churches");
    }

    void checkStock() {
      List<Need> asks = distinctAsks();
      List<Piece> counted = new ArrayList<>();
      List<Piece> elsewhere = new ArrayList<>();
      List<Piece> others = new ArrayList<>();
      for (Piece piece : ofColours(shortage.pieceKind(), asks)) {
        if (!serves(piece, asks)) {
          others.add(piece);
        } else if (shortage.level() == Level.CLUSTER || isThere.test(piece)) {
          counted.add(piece);
        } else {
          elsewhere.add(piece);
        }
      }
      require(areSame(counted, shortage.pieces()), "the pieces are not those that serve");
      require(areSame(elsewhere, shortage.elsewhere()), "the pieces elsewhere differ");
      require(
          areSame(others, shortage.notServing().stream().map(NotServing::piece).toList()),
          "the pieces that do not serve differ");
      require(shortage.notServing().stream().allMatch(this::isHindered), "a hindrance is wrong");
    }

    private boolean serves(Piece piece, List<Need> asks) {
      for (Need need : asks) {
        if (reckoning.serves(piece, need)) {
          return true;
        }
      }
      return false;
    }

    /** Of needs that ask the same of a piece one will do. */
    private List<Need> distinctAsks() {
      Set<List<Object>> seen = new HashSet<>();
      return shortage.needs().stream()
          .filter(n -> seen.add(List.of(n.mass(), n.church(), n.window(), n.colour(), n.festive())))
          .toList();
    }

    private boolean isHindered(NotServing not) {
      return shortage.needs().stream()
          .filter(need -> need.isServedBy(not.piece().colours()))
          .findFirst()
          .flatMap(need -> reckoning.findHindrance(not.piece(), need))
          .filter(not.hindrance()::equals)
          .isPresent();
    }

    void checkCertificate() {
      CertificateProof proof =
          new CertificateProof(shortage.needs(), shortage.pieces(), reckoning::serves, reckoning);
      objections.addAll(proof.findObjections(shortage.certificate()));
    }

    void checkUnserved() {
      int missing = shortage.allClash() ? shortage.needed() - shortage.available() : 1;
      require(
          Set.copyOf(shortage.unserved()).size() == missing,
          "not as many go without as pieces are missing");
      require(shortage.needs().containsAll(shortage.unserved()), "one without is no need of these");
    }

    void checkExhausted() {
      require(shortage.exhausted().stream().allMatch(Need::isMust), "not all exhausted are musts");
      shortage.exhausted().stream()
          .collect(Collectors.groupingBy(Need::kind))
          .forEach(this::checkExhausted);
    }

    private void checkExhausted(PieceKind kind, List<Need> needs) {
      BiPredicate<Piece, Need> serves = reckoning::servesLawfully;
      Collection<Piece> lawful =
          pieces.getOrDefault(kind, List.of()).stream()
              .filter(piece -> needs.stream().anyMatch(need -> serves.test(piece, need)))
              .toList();
      require(
          new CertificateProof(needs, lawful, serves, reckoning).cannotAllBeServed(),
          "a lawful colour serves all the exhausted needs");
    }

    void checkKind() {
      boolean byJourneyAlone =
          shortage.allClash() && pairs(shortage.needs()).anyMatch(Check::isByJourneyAlone);
      require(
          byJourneyAlone == (shortage.kind() == ShortageKind.UNREACHABLE),
          "journey or hour is wrongly blamed");
      require(byJourneyAlone == !shortage.late().isEmpty(), "the late journey is not told");
      shortage.late().forEach(this::checkLate);
    }

    private static boolean isByJourneyAlone(List<Need> pair) {
      return !pair.get(0).window().overlaps(pair.get(1).window())
          && !pair.get(0).church().equals(pair.get(1).church());
    }

    private void checkLate(LateArrival late) {
      Optional<Duration> journey = span.journeys().find(late.from().church(), late.to().church());
      Instant arrives = journey.map(late.from().window().cleared()::plus).orElse(Instant.MAX);
      require(shortage.needs().containsAll(List.of(late.from(), late.to())), "a stranger is late");
      require(arrives.equals(late.arrives()), "the hour of arrival differs");
      require(late.due().equals(late.to().window().setOut()), "the hour due differs");
    }

    private void require(boolean holds, String objection) {
      if (!holds) {
        objections.add(objection);
      }
    }
  }

  /** Both in order of code. */
  private static boolean areSame(List<Piece> wanted, List<Piece> listed) {
    boolean same = wanted.size() == listed.size();
    for (int at = 0; same && at < wanted.size(); at++) {
      same = wanted.get(at) == listed.get(at) || wanted.get(at).equals(listed.get(at));
    }
    return same;
  }

  private static Stream<List<Need>> pairs(List<Need> needs) {
    return needs.stream()
        .flatMap(
            one -> needs.stream().filter(other -> other != one).map(other -> List.of(one, other)));
  }
}
