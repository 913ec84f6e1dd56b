package vestiary.plan;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.plan.Movement;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Situation;
import vestiary.planning.SpanToCheck;
import vestiary.pool.PlannedWear;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;

/**
 * What the plan that holds gives to each need it was made for: the rows as they stand, since a
 * piece put in care has none any more and a remedy may have changed one; and what the plan said of
 * those who go without.
 */
final class StandingPlan {

  private record Wanted(PlanResult.Person person, PieceKind kind) {
    static Wanted of(Need need) {
      return new Wanted(
          new PlanResult.Person(need.mass().value(), need.role(), need.ordinal()), need.kind());
    }
  }

  private record Held(UUID mass, String piece) {}

  /**
   * The plan that holds, as the planner takes it.
   *
   * @param before what it was made from
   * @param last what it gives and carries, as it stands, with the score it had
   */
  record Found(Situation before, Plan last) {}

  private final Map<String, Piece> pieces;
  private final Map<Wanted, PlannedWear> planned = new HashMap<>();
  private final Map<Wanted, PlanResult.Lacking> lacking = new HashMap<>();
  private final Map<Wanted, PlanResult.Worn> held = new HashMap<>();

  private StandingPlan(SpanToCheck span, PlanResult result, Situation now) {
    this.pieces =
        now.span().pieces().stream().collect(Collectors.toMap(Piece::code, Function.identity()));
    for (PlannedWear one : span.taken().planned()) {
      Optional.ofNullable(pieces.get(one.piece()))
          .ifPresent(piece -> planned.put(new Wanted(person(one), piece.kind()), one));
    }
    Stream.concat(result.leftOut().stream(), result.unmet().stream())
        .forEach(one -> lacking.put(new Wanted(one.person(), one.kind()), one));
    List<Held> holds =
        now.holds().stream().map(one -> new Held(one.mass().value(), one.piece())).toList();
    result.worn().stream()
        .filter(one -> one.held() && holds.contains(new Held(one.person().mass(), one.piece())))
        .forEach(one -> held.put(new Wanted(one.person(), one.kind()), one));
  }

  /**
   * The plan as it stands; a need of which nothing stands has no provision.
   *
   * @param span the plan's dates as they are now
   * @param trips what is carried by it still
   * @param now the planner's question as it is now
   */
  static Found found(SpanToCheck span, Kept kept, List<PlanResult.Trip> trips, Situation now) {
    StandingPlan standing = new StandingPlan(span, kept.result(), now);
    return new Found(
        kept.basis().situation(),
        new Plan(
            kept.basis().needs().stream().flatMap(need -> standing.find(need).stream()).toList(),
            trips.stream().flatMap(trip -> standing.movement(trip).stream()).toList(),
            kept.progress().score(),
            kept.progress().bounds(),
            List.of()));
  }

  /** A plan as it is kept. */
  record Kept(Basis basis, PlanResult result, Progress progress) {}

  /** Without pieces that are gone; empty if none is left. */
  private Optional<Movement> movement(PlanResult.Trip trip) {
    List<Piece> there = trip.pieces().stream().map(pieces::get).filter(Objects::nonNull).toList();
    return there.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Movement(
                there,
                new ChurchId(trip.from()),
                new ChurchId(trip.to()),
                trip.ready().stream().findFirst().orElse(Instant.MIN),
                trip.leaveBy(),
                trip.arriveBy(),
                trip.carrier(),
                trip.onAsking()));
  }

  private Optional<Provision> find(Need need) {
    Wanted wanted = Wanted.of(need);
    if (planned.containsKey(wanted)) {
      PlannedWear one = planned.get(wanted);
      int depth = Math.min(one.depth(), need.ladder().size());
      return Optional.of(new Provision.Worn(need, pieces.get(one.piece()), depth, false));
    }
    if (held.containsKey(wanted)) {
      PlanResult.Worn one = held.get(wanted);
      return Optional.ofNullable(pieces.get(one.piece()))
          .map(piece -> new Provision.Worn(need, piece, one.depth(), true));
    }
    return Optional.ofNullable(lacking.get(wanted)).map(one -> without(need, one));
  }

  private static Provision without(Need need, PlanResult.Lacking one) {
    return one.step().isEmpty()
        ? new Provision.Unmet(need)
        : new Provision.LeftOut(need, one.depth());
  }

  private static PlanResult.Person person(PlannedWear one) {
    return new PlanResult.Person(
        one.wearer().mass().value(), one.wearer().role(), one.wearer().ordinal());
  }
}
