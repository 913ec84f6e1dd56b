package vestiary.plan;

import static vestiary.web.Speech.say;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.plan.Contradiction;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Movement;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Resting;
import vestiary.allocation.plan.Situation;
import vestiary.calendar.Term;
import vestiary.cluster.Church;
import vestiary.planning.SpanToCheck;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.Window;
import vestiary.web.Speech;

/** From the planner's answer to what is kept of it. */
final class KeptResult {

  /** A piece at a church, worn or held. */
  private record Stay(ChurchId church, Window window) {}

  private final SpanToCheck span;
  private final Situation situation;
  private final Plan plan;
  private final WhyWords why;
  private final Map<String, List<Stay>> stays = new HashMap<>();

  KeptResult(SpanToCheck span, Situation situation, Plan plan) {
    this.span = span;
    this.situation = situation;
    this.plan = plan;
    this.why = new WhyWords(span, situation, plan);
  }

  PlanResult result() {
    Map<String, List<Stay>> all =
        Stream.concat(
                plan.assignments().stream()
                    .filter(one -> !one.held())
                    .map(one -> Map.entry(one.piece().code(), stay(one.need()))),
                situation.holds().stream().map(one -> Map.entry(one.piece(), stay(one))))
            .collect(
                Collectors.groupingBy(
                    Map.Entry::getKey,
                    Collectors.mapping(Map.Entry::getValue, Collectors.toList())));
    stays.putAll(all);
    return new PlanResult(
        plan.assignments().stream().map(this::worn).toList(),
        plan.leftOut().stream().map(KeptResult::lacking).toList(),
        plan.unmet().stream().map(KeptResult::lacking).toList(),
        plan.journeys().stream().map(KeptResult::trip).toList(),
        Resting.awayFromHome(plan, situation).stream().map(KeptResult::resting).toList(),
        plan.contradictions().stream().map(this::said).toList());
  }

  private PlanResult.Worn worn(Provision.Worn one) {
    Need need = one.need();
    Piece piece = one.piece();
    return new PlanResult.Worn(
        person(need),
        need.kind(),
        need.colour(),
        piece.code(),
        piece.set(),
        one.depth(),
        one.findStep().map(Term::id).orElse(""),
        one.source(),
        one.held(),
        need.church().value(),
        from(piece, need),
        until(piece, need),
        need.window().start(),
        need.window().end(),
        why.sentences(one));
  }

  private static PlanResult.Lacking lacking(Provision one) {
    Need need = one.need();
    return new PlanResult.Lacking(
        person(need),
        need.kind(),
        need.colour(),
        one.depth(),
        one.findStep().map(Term::id).orElse(""),
        one.source());
  }

  private static PlanResult.Person person(Need need) {
    return new PlanResult.Person(need.mass().value(), need.role(), need.ordinal());
  }

  private static PlanResult.Trip trip(Movement one) {
    return new PlanResult.Trip(
        one.pieces().stream().map(Piece::code).toList(),
        one.from().value(),
        one.to().value(),
        one.ready().equals(Instant.MIN) ? List.of() : List.of(one.ready()),
        one.leaveBy(),
        one.arriveBy(),
        one.carrier(),
        one.onAsking());
  }

  private static PlanResult.Resting resting(Resting one) {
    return new PlanResult.Resting(
        one.pieces().stream().map(Piece::code).toList(),
        one.church().value(),
        one.home().value(),
        one.since().equals(Instant.MIN) ? List.of() : List.of(one.since()));
  }

  /** Where it stays out from the Mass before, the turn after that is when this one has it. */
  private Instant from(Piece piece, Need need) {
    return around(piece, need)
        .filter(other -> other.window().start().isBefore(need.window().start()))
        .map(other -> other.window().end().plus(turn()))
        .filter(handedOver -> handedOver.isAfter(need.window().setOut()))
        .max(Comparator.naturalOrder())
        .orElse(need.window().setOut());
  }

  private Instant until(Piece piece, Need need) {
    Instant handOver = need.window().end().plus(turn());
    return around(piece, need)
            .filter(other -> other.window().start().isAfter(need.window().start()))
            .anyMatch(other -> other.window().setOut().isBefore(need.window().cleared()))
        ? handOver
        : need.window().cleared();
  }

  /** Where else it is at that church with set-out or clearance of both in one another's way. */
  private Stream<Stay> around(Piece piece, Need need) {
    return stays.getOrDefault(piece.code(), List.of()).stream()
        .filter(other -> other.church().equals(need.church()))
        .filter(other -> other.window().overlaps(need.window()));
  }

  private Duration turn() {
    return situation.span().policies().turn();
  }

  private static Stay stay(Need need) {
    return new Stay(need.church(), need.window());
  }

  private static Stay stay(Hold hold) {
    return new Stay(hold.church(), hold.window());
  }

  private String said(Contradiction one) {
    return say(
        "%s is to be at %s by %s, and cannot leave %s before %s.",
        one.piece(), church(one.to()), clock(one.due()), church(one.from()), clock(one.free()));
  }

  private String church(ChurchId id) {
    return span.churches().stream()
        .filter(church -> church.id().equals(id))
        .map(Church::name)
        .findFirst()
        .orElse(say("another church"));
  }

  private String clock(Instant moment) {
    return moment.equals(Instant.MAX) || moment.equals(Instant.MIN)
        ? say("further notice")
        : Speech.day(moment.atZone(span.cluster().zone()).toLocalDate())
            + ", "
            + Speech.clock(moment.atZone(span.cluster().zone()));
  }
}
