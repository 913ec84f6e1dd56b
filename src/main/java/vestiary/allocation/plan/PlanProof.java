package vestiary.allocation.plan;

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

  /**
   * Where a piece is bound, for a Mass (whose window it has) or for anything else.
   *
   * @param given whether the plan found it so: held or away
   */
  private record Stay(
      ChurchId church, Instant from, Instant until, Optional<Window> mass, boolean given) {}

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
            : need.isServedBy(one.findStep().orElseThrow(), one.piece().colours());
    Fit fit = situation.fit(need);
    require(
        one.held() || !one.piece().keptFrom().contains(need.mass()),
        one.piece().code() + " is not given for that Mass by its owner");
    require(span.pieces().contains(one.piece()), one.piece().code() + " is no piece of the pool");
    require(one.piece().kind() == need.kind() && lawful, one.piece().code() + " is not lawful");
    require(
        !fit.must() || fit.suits(situation.traits(one.piece()).length()),
        one.piece().code() + " does not fit");
  }

  private List<Movement> journeys() {
    return Stream.concat(plan.movements().stream(), plan.waysHome().stream())
        .sorted(Comparator.comparing(Movement::leaveBy))
        .toList();
  }

  private void checkMovements() {
    for (Movement one : journeys()) {
      boolean ride = situation.rides().stream().anyMatch(one::isBy);
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
    for (Movement one : plan.waysHome()) {
      require(
          !one.isCarriage() && one.pieces().stream().allMatch(p -> p.home().equals(one.to())),
          "a way home leads elsewhere: " + one);
    }
  }

  /** Follows one piece from where it lies through all it does. */
  private void checkPiece(Piece piece) {
    List<Stay> stays = stays(piece);
    List<Movement> moves = journeys().stream().filter(one -> one.pieces().contains(piece)).toList();
    ChurchId at = situation.start(piece);
    Instant free = Instant.MIN;
    Optional<Window> before = Optional.empty();
    boolean given = true;
    int next = 0;
    for (Stay stay : stays) {
      if (stay.given() && piece.staysHome() && !stay.church().equals(piece.home())) {
        require(!plan.contradictions().isEmpty(), piece.code() + " cannot be where it is held");
        continue;
      }
      // What sacristans have set aside and cannot all be is told, and no fault of the plan.
      boolean contradictory = given && stay.given() && !canFollow(at, free, before, stay);
      require(
          !contradictory || !plan.contradictions().isEmpty(),
          piece.code() + " cannot be where it is held");
      int first = next;
      while (next < moves.size() && !moves.get(next).arriveBy().isAfter(stay.from())) {
        next++;
      }
      List<Movement> own = moves.subList(first, next);
      checkWay(piece, at, free, own);
      at = own.isEmpty() ? at : own.get(own.size() - 1).to();
      require(
          contradictory || at.equals(stay.church()), piece.code() + " is not where it is needed");
      require(
          contradictory || isFree(free, own.isEmpty() ? before : Optional.empty(), stay),
          piece.code() + " is in two places at one time");
      at = stay.church();
      free = contradictory && free.isAfter(stay.until()) ? free : stay.until();
      before = stay.mass();
      given = stay.given();
    }
    checkWay(piece, at, free, moves.subList(next, moves.size()));
    moves.stream()
        .filter(move -> !plan.waysHome().contains(move))
        .forEach(
            move -> require(isCalledFor(piece, move), piece.code() + " is carried for nothing"));
  }

  /** Whether it or another piece of its set that rides with it is needed elsewhere next. */
  private boolean isCalledFor(Piece piece, Movement move) {
    return move.pieces().stream()
        .filter(
            other ->
                other.equals(piece) || (!piece.set().isEmpty() && other.set().equals(piece.set())))
        .anyMatch(
            other ->
                stays(other).stream()
                    .filter(stay -> !stay.from().isBefore(move.arriveBy()))
                    .findFirst()
                    .filter(stay -> !stay.church().equals(move.from()))
                    .isPresent());
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

  private boolean canFollow(ChurchId at, Instant free, Optional<Window> before, Stay stay) {
    if (at.equals(stay.church())) {
      return isFree(free, before, stay);
    }
    return span.journeys()
        .find(at, stay.church())
        .filter(time -> stay.from().equals(Instant.MIN) || !free.isAfter(stay.from().minus(time)))
        .isPresent();
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
            .map(one -> stay(one.need().church(), one.need().window(), false));
    Stream<Stay> held =
        situation.holds().stream()
            .filter(hold -> hold.piece().equals(piece.code()))
            .map(hold -> stay(hold.church(), hold.window(), true));
    Stream<Stay> away = piece.away().stream().map(time -> away(piece, time));
    return Stream.of(worn, held, away)
        .flatMap(stay -> stay)
        .sorted(Comparator.comparing(Stay::from).thenComparing(Stay::until))
        .toList();
  }

  private static Stay stay(ChurchId church, Window window, boolean given) {
    return new Stay(church, window.setOut(), window.cleared(), Optional.of(window), given);
  }

  private static Stay away(Piece piece, Away time) {
    return new Stay(piece.home(), time.from(), time.until(), Optional.empty(), true);
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
    objections.addAll(ScoreProof.findObjections(plan, situation));
    require(plan.bounds().compareTo(plan.score()) <= 0, "the plan is better than can be");
  }

  private void require(boolean holds, String objection) {
    if (!holds) {
      objections.add(objection);
    }
  }
}
