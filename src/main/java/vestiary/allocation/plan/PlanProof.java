package vestiary.allocation.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import vestiary.allocation.Span;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.ColourMatch;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.Step;
import vestiary.vesting.Window;

/**
 * Checks a plan again as a person would with pencil and paper: nothing double-booked, every journey
 * makeable and told, every substitute lawful, every hold kept, every number right. It shares no
 * step with the search that made the plan.
 */
public final class PlanProof {

  /** Where a piece is bound, for a Mass (whose window it has) or for anything else. */
  private record Stay(ChurchId church, Instant from, Instant until, Optional<Window> mass) {}

  private final Plan plan;
  private final Situation situation;
  private final Span span;
  private final List<String> objections = new ArrayList<>();

  private PlanProof(Plan plan, Situation situation) {
    this.plan = plan;
    this.situation = situation;
    this.span = situation.span();
  }

  /** What is wrong with a plan, in words; empty if it holds. */
  public static List<String> findObjections(Plan plan, Situation situation) {
    PlanProof proof = new PlanProof(plan, situation);
    proof.checkProvisions();
    proof.checkMovements();
    situation.span().pieces().forEach(proof::checkPiece);
    proof.checkHolds();
    proof.checkScore();
    return List.copyOf(proof.objections);
  }

  private void checkProvisions() {
    List<Need> answered = plan.provisions().stream().map(Provision::need).toList();
    require(answered.equals(span.needs().stream().sorted().toList()), "not each need is answered");
    plan.assignments().forEach(this::checkWorn);
    for (Provision.LeftOut left : plan.leftOut()) {
      require(
          left.findStep().filter(Step::isWithout).isPresent(), "a piece is left out unlawfully");
    }
    Set<Object> worn = new HashSet<>();
    plan.assignments()
        .forEach(
            one ->
                require(
                    worn.add(List.of(one.need().mass(), one.piece().code())),
                    one.piece().code() + " is worn twice at one Mass"));
  }

  private void checkWorn(Provision.Worn one) {
    Need need = one.need();
    boolean lawful =
        one.depth() == 0
            ? need.isServedBy(one.piece().colours())
            : ColourMatch.of(
                    one.piece().colours(),
                    one.findStep().orElseThrow().colourFor(need.colour()),
                    need.festive())
                .serves();
    Fit fit = situation.fit(need);
    require(span.pieces().contains(one.piece()), one.piece().code() + " is no piece of the pool");
    require(one.piece().kind() == need.kind() && lawful, one.piece().code() + " is not lawful");
    require(
        !fit.must() || fit.suits(situation.traits(one.piece()).length()),
        one.piece().code() + " does not fit");
  }

  private void checkMovements() {
    for (Movement one : plan.movements()) {
      boolean ride =
          situation.rides().stream()
              .anyMatch(
                  r ->
                      r.who().equals(one.carrier())
                          && r.from().equals(one.from())
                          && r.to().equals(one.to())
                          && r.departs().equals(one.leaveBy())
                          && r.arrives().equals(one.arriveBy()));
      boolean enough =
          span.journeys()
              .find(one.from(), one.to())
              .filter(time -> !one.leaveBy().plus(time).isAfter(one.arriveBy()))
              .isPresent();
      require(one.isCarriage() ? enough : ride, "a journey cannot be made: " + one);
      require(
          one.pieces().stream().noneMatch(Piece::staysHome),
          "what stays at home is carried: " + one);
    }
  }

  /** Follows one piece from its home through all it does. */
  private void checkPiece(Piece piece) {
    List<Stay> stays = stays(piece);
    List<Movement> moves =
        plan.movements().stream().filter(one -> one.pieces().contains(piece)).toList();
    ChurchId at = piece.home();
    Instant free = Instant.MIN;
    Optional<Window> before = Optional.empty();
    int next = 0;
    for (Stay stay : stays) {
      int first = next;
      while (next < moves.size() && !moves.get(next).arriveBy().isAfter(stay.from())) {
        next++;
      }
      List<Movement> own = moves.subList(first, next);
      checkWay(piece, at, free, own);
      at = own.isEmpty() ? at : own.get(own.size() - 1).to();
      require(at.equals(stay.church()), piece.code() + " is not where it is needed");
      require(
          isFree(free, own.isEmpty() ? before : Optional.empty(), stay),
          piece.code() + " is in two places at one time");
      free = stay.until();
      before = stay.mass();
    }
    List<Movement> after = moves.subList(next, moves.size());
    checkWay(piece, at, free, after);
    after.forEach(
        move -> require(hasCompany(piece, move), piece.code() + " is carried for nothing"));
  }

  private void checkWay(Piece piece, ChurchId start, Instant free, List<Movement> moves) {
    ChurchId at = start;
    Instant ready = free;
    for (Movement move : moves) {
      require(move.from().equals(at), piece.code() + " is carried from where it is not");
      require(!move.leaveBy().isBefore(ready), piece.code() + " leaves before it is free");
      at = move.to();
      ready = move.arriveBy();
    }
  }

  /** Whether it goes along because the other piece of its set is needed. */
  private static boolean hasCompany(Piece piece, Movement move) {
    return !piece.set().isEmpty()
        && move.pieces().stream()
            .anyMatch(other -> other != piece && other.set().equals(piece.set()));
  }

  private boolean isFree(Instant free, Optional<Window> before, Stay stay) {
    boolean staysOut =
        before.isPresent()
            && stay.mass().isPresent()
            && !before.get().end().plus(span.policies().turn()).isAfter(stay.mass().get().start());
    return staysOut || !free.isAfter(stay.from());
  }

  private List<Stay> stays(Piece piece) {
    Stream<Stay> worn =
        plan.assignments().stream()
            .filter(one -> one.piece().equals(piece) && !one.held())
            .map(one -> stay(one.need().church(), one.need().window()));
    Stream<Stay> held =
        situation.holds().stream()
            .filter(hold -> hold.piece().equals(piece.code()))
            .map(hold -> stay(hold.church(), hold.window()));
    Stream<Stay> away = piece.away().stream().map(time -> away(piece, time));
    return Stream.of(worn, held, away)
        .flatMap(stay -> stay)
        .sorted(Comparator.comparing(Stay::from).thenComparing(Stay::until))
        .toList();
  }

  private static Stay stay(ChurchId church, Window window) {
    return new Stay(church, window.setOut(), window.cleared(), Optional.of(window));
  }

  private static Stay away(Piece piece, Away time) {
    return new Stay(piece.home(), time.from(), time.until(), Optional.empty());
  }

  private void checkHolds() {
    for (Provision.Worn one : plan.assignments()) {
      boolean held =
          situation.holds().stream()
              .anyMatch(
                  hold ->
                      hold.piece().equals(one.piece().code())
                          && hold.mass().equals(one.need().mass()));
      require(held == one.held(), one.piece().code() + " is called held wrongly");
    }
  }

  private void checkScore() {
    Score score = plan.score();
    require(
        score.unmet().stream().mapToLong(Long::longValue).sum() == plan.unmet().size(),
        "the unmet are miscounted");
    List<Movement> carriages = plan.movements().stream().filter(Movement::isCarriage).toList();
    require(score.carriages() == carriages.size(), "the carriages are miscounted");
    long minutes =
        carriages.stream()
            .map(one -> span.journeys().find(one.from(), one.to()).orElse(Duration.ZERO))
            .mapToLong(time -> (time.toSeconds() + 59) / 60)
            .sum();
    require(score.minutes() == minutes, "the minutes are miscounted");
    require(plan.bounds().compareTo(score) <= 0, "the plan is better than can be");
  }

  private void require(boolean holds, String objection) {
    if (!holds) {
      objections.add(objection);
    }
  }
}
