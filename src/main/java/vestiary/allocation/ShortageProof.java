package vestiary.allocation;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.vesting.Away;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Window;

/**
 * Checks a finding again by comparing pairs and counting, as a person would with pencil and paper.
 * It shares no step with the search that found it.
 */
public final class ShortageProof {

  private final Shortage shortage;
  private final Span span;
  private final List<String> objections = new ArrayList<>();

  private ShortageProof(Shortage shortage, Span span) {
    this.shortage = shortage;
    this.span = span;
  }

  /** What is wrong with a finding, in words; empty if it holds. */
  public static List<String> findObjections(Shortage shortage, Span span) {
    ShortageProof proof = new ShortageProof(shortage, span);
    proof.checkNeeds();
    proof.checkStock();
    proof.checkUnserved();
    proof.checkExhausted();
    proof.checkKind();
    return List.copyOf(proof.objections);
  }

  private void checkNeeds() {
    require(span.needs().containsAll(shortage.needs()), "a need is not asked for");
    require(Set.copyOf(shortage.needs()).size() == shortage.needed(), "a need stands twice");
    require(ofOneKind(shortage.needs()), "the needs are of several kinds");
    require(allClash(shortage.needs()), "two of the needs can share a piece");
    require(
        shortage.level() == Level.CLUSTER
            || shortage.needs().stream().map(Need::church).distinct().count() == 1,
        "a local finding has needs of several churches");
  }

  private void checkStock() {
    Set<Piece> anywhere = piecesThat(piece -> serves(piece, false));
    Set<Piece> counted =
        shortage.level() == Level.CLUSTER ? anywhere : keep(anywhere, this::isAtHome);
    Set<Piece> elsewhere = keep(anywhere, piece -> !counted.contains(piece));
    Set<Piece> others =
        piecesThat(
            piece ->
                !anywhere.contains(piece)
                    && shortage.needs().stream().anyMatch(n -> n.isServedBy(piece.colours())));
    require(counted.equals(Set.copyOf(shortage.pieces())), "the pieces are not those that serve");
    require(elsewhere.equals(Set.copyOf(shortage.elsewhere())), "the pieces elsewhere differ");
    require(
        others.equals(
            shortage.notServing().stream().map(NotServing::piece).collect(Collectors.toSet())),
        "the pieces that do not serve differ");
    require(counted.size() == shortage.available(), "a piece stands twice");
    require(counted.size() < shortage.needed(), "there are pieces enough");
  }

  private void checkUnserved() {
    require(
        Set.copyOf(shortage.unserved()).size() == shortage.missing(),
        "not as many go without as pieces are missing");
    require(shortage.needs().containsAll(shortage.unserved()), "one without is no need of these");
  }

  private void checkExhausted() {
    require(shortage.exhausted().stream().allMatch(Need::isMust), "not all exhausted are musts");
    shortage.exhausted().stream()
        .collect(Collectors.groupingBy(Need::kind))
        .values()
        .forEach(this::checkExhaustedOfOneKind);
  }

  private void checkExhaustedOfOneKind(List<Need> needs) {
    Set<Piece> lawful =
        span.pieces().stream()
            .filter(piece -> needs.stream().anyMatch(need -> serves(piece, need, true)))
            .collect(Collectors.toSet());
    require(allClash(needs), "two of the exhausted needs can share a piece");
    require(lawful.size() < needs.size(), "a lawful colour serves all the exhausted needs");
  }

  private void checkKind() {
    boolean byJourneyAlone =
        pairs(shortage.needs())
            .anyMatch(
                pair ->
                    !pair.get(0).window().overlaps(pair.get(1).window())
                        && !pair.get(0).church().equals(pair.get(1).church()));
    require(
        byJourneyAlone == (shortage.kind() == ShortageKind.UNREACHABLE),
        "journey or hour is wrongly blamed");
    require(byJourneyAlone == !shortage.late().isEmpty(), "the late journey is not told");
    shortage.late().forEach(this::checkLate);
  }

  private void checkLate(LateArrival late) {
    Optional<Duration> journey = span.journeys().find(late.from().church(), late.to().church());
    Instant arrives = journey.map(late.from().window().cleared()::plus).orElse(Instant.MAX);
    require(shortage.needs().containsAll(List.of(late.from(), late.to())), "a stranger is late");
    require(arrives.equals(late.arrives()), "the hour of arrival differs");
    require(late.due().equals(late.to().window().setOut()), "the hour due differs");
  }

  private boolean allClash(List<Need> needs) {
    return pairs(needs).noneMatch(pair -> precedes(pair.get(0), pair.get(1)));
  }

  private boolean precedes(Need one, Need other) {
    Window first = one.window();
    Window next = other.window();
    boolean staysOut =
        one.church().equals(other.church())
            && !first.end().plus(span.policies().turn()).isAfter(next.start());
    boolean carried =
        span.journeys()
            .find(one.church(), other.church())
            .filter(time -> !first.cleared().plus(time).isAfter(next.setOut()))
            .isPresent();
    return staysOut || carried;
  }

  private boolean serves(Piece piece, boolean lawfully) {
    return shortage.needs().stream().anyMatch(need -> serves(piece, need, lawfully));
  }

  private boolean serves(Piece piece, Need need, boolean lawfully) {
    boolean colour =
        lawfully ? need.isLawfullyServedBy(piece.colours()) : need.isServedBy(piece.colours());
    return piece.kind() == need.kind() && colour && canBeThere(piece, need);
  }

  private boolean canBeThere(Piece piece, Need need) {
    boolean atHome = piece.home().equals(need.church());
    Optional<Duration> there = span.journeys().find(piece.home(), need.church());
    return (atHome || !piece.staysHome())
        && there.isPresent()
        && piece.away().stream().allMatch(away -> leavesTime(away, piece, need, there.get()));
  }

  private boolean leavesTime(Away away, Piece piece, Need need, Duration there) {
    // Subtracted on the side of the Mass: an absence may last to the end of all time.
    boolean before = !need.window().setOut().minus(there).isBefore(away.until());
    boolean after =
        span.journeys()
            .find(need.church(), piece.home())
            .filter(back -> !need.window().cleared().plus(back).isAfter(away.from()))
            .isPresent();
    return before || after;
  }

  private boolean isAtHome(Piece piece) {
    return piece.home().equals(shortage.needs().get(0).church());
  }

  private Set<Piece> piecesThat(Predicate<Piece> wanted) {
    PieceKind kind = shortage.pieceKind();
    return keep(
        span.pieces().stream().filter(piece -> piece.kind() == kind).collect(Collectors.toSet()),
        wanted);
  }

  private static Set<Piece> keep(Set<Piece> pieces, Predicate<Piece> wanted) {
    Set<Piece> kept = new HashSet<>(pieces);
    kept.removeIf(wanted.negate());
    return kept;
  }

  private static boolean ofOneKind(List<Need> needs) {
    return needs.stream().map(Need::kind).distinct().count() == 1;
  }

  private static Stream<List<Need>> pairs(List<Need> needs) {
    return needs.stream()
        .flatMap(
            one -> needs.stream().filter(other -> other != one).map(other -> List.of(one, other)));
  }

  private void require(boolean holds, String objection) {
    if (!holds) {
      objections.add(objection);
    }
  }
}
