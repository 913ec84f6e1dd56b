package vestiary.plan;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.planning.CheckClashes;
import vestiary.planning.SpanToCheck;
import vestiary.pool.CarriedPiece;
import vestiary.pool.KeepPlanned;
import vestiary.pool.Planned;
import vestiary.pool.PlannedWear;
import vestiary.pool.PooledPiece;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.DatedMass;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Wearer;
import vestiary.web.Speech;

/**
 * Makes a plan the one that holds, in one transaction: all of it or nothing. What it replaces is
 * kept, so that it can be undone.
 */
@ApplicationScoped
class ApplyPlan {

  private final PlanRows plans;
  private final CheckClashes check;
  private final KeepPlanned keep;
  private final Clock clock;

  ApplyPlan(PlanRows plans, CheckClashes check, KeepPlanned keep, Clock clock) {
    this.plans = plans;
    this.check = check;
    this.keep = keep;
    this.clock = clock;
  }

  /**
   * Applies a plan; once it holds, doing it again changes nothing.
   *
   * @throws Refused if it is not over, came to nothing, or does not fit any more: a Mass of it was
   *     moved, or a piece of it held or put in care
   */
  @Transactional
  void apply(String id) {
    PlanRow row = plans.getLocked(id);
    if (isNewest(row)) {
      return;
    }
    if (row.result == null) {
      throw taken(
          row.state().isAtWork()
              ? say(
                  "This plan is still being worked out. Wait until it is there, or end it with what is found.")
              : say("This plan came to nothing, so that there is nothing to apply. Plan again."));
    }
    SpanToCheck span = check.load(row.firstDate, row.lastDate);
    refuseIfMoved(row.result, span);
    row.replaced = keep.replace(part(span), planned(row.result, PlannedDays.of(span)));
    row.appliedAt = clock.instant();
  }

  /**
   * Puts back what was planned before this was applied; once that is done, doing it again changes
   * nothing. What has gone from the schedule or the pool since is left out.
   *
   * @throws Refused if a newer plan holds for some of its days, or a piece is held or in care now
   */
  @Transactional
  void undo(String id) {
    PlanRow row = plans.getLocked(id);
    if (row.appliedAt == null) {
      return;
    }
    if (!isNewest(row)) {
      throw taken(say("A newer plan is applied for some of these days. Undo that one first."));
    }
    SpanToCheck span = check.load(row.firstDate, row.lastDate);
    keep.replace(part(span), stillThere(row.replaced, span));
    row.replaced = null;
    row.appliedAt = null;
  }

  private boolean isNewest(PlanRow row) {
    return row.appliedAt != null
        && plans.appliedWithin(row.firstDate, row.lastDate).get(0).id.equals(row.id);
  }

  private static Refused taken(String sentence) {
    return new Refused(new Refusal.Taken("", sentence));
  }

  private static KeepPlanned.Part part(SpanToCheck span) {
    PlannedDays days = PlannedDays.of(span);
    return new KeepPlanned.Part(
        days.from(), days.until(), span.asked().stream().map(DatedMass::id).toList());
  }

  private static void refuseIfMoved(PlanResult result, SpanToCheck span) {
    Map<MassId, DatedMass> masses =
        span.asked().stream().collect(Collectors.toMap(DatedMass::id, Function.identity()));
    for (PlanResult.Worn one : result.worn()) {
      DatedMass mass = masses.get(new MassId(one.person().mass()));
      boolean same =
          mass != null
              && mass.church().id().value().equals(one.church())
              && mass.start().toInstant().equals(one.start())
              && mass.end().toInstant().equals(one.end());
      if (!same) {
        throw taken(
            say(
                "The Mass of %s was moved or cancelled since this was planned. Nothing was changed; plan again.",
                when(one, span)));
      }
    }
  }

  private static String when(PlanResult.Worn one, SpanToCheck span) {
    String church =
        span.churches().stream()
            .filter(c -> c.id().value().equals(one.church()))
            .map(c -> say(" at %s", c.name()))
            .findFirst()
            .orElse("");
    ZonedDateTime start = one.start().atZone(span.cluster().zone());
    return Speech.day(start.toLocalDate()) + ", " + Speech.clock(start) + church;
  }

  /** Journeys of the days on either side belong to the plans of those days. */
  private static Planned planned(PlanResult result, PlannedDays days) {
    return new Planned(
        result.worn().stream().filter(one -> !one.held()).map(ApplyPlan::wear).toList(),
        result.trips().stream()
            .filter(trip -> days.contain(trip.arriveBy()))
            .flatMap(trip -> carried(trip).stream())
            .toList());
  }

  private static PlannedWear wear(PlanResult.Worn one) {
    PlanResult.Person person = one.person();
    return new PlannedWear(
        one.piece(),
        new Wearer(new MassId(person.mass()), person.role(), person.ordinal()),
        new ChurchId(one.church()),
        one.depth(),
        one.from(),
        one.until());
  }

  private static List<CarriedPiece> carried(PlanResult.Trip trip) {
    return trip.pieces().stream()
        .map(
            piece ->
                new CarriedPiece(
                    piece,
                    new ChurchId(trip.from()),
                    new ChurchId(trip.to()),
                    trip.ready(),
                    trip.leaveBy(),
                    trip.arriveBy(),
                    trip.carrier(),
                    trip.onAsking()))
        .toList();
  }

  private static Planned stillThere(Planned before, SpanToCheck span) {
    Set<MassId> masses = span.masses().stream().map(DatedMass::id).collect(Collectors.toSet());
    Set<String> pieces = span.pieces().stream().map(PooledPiece::code).collect(Collectors.toSet());
    return new Planned(
        before.worn().stream()
            .filter(one -> masses.contains(one.wearer().mass()) && pieces.contains(one.piece()))
            .toList(),
        before.carried().stream().filter(one -> pieces.contains(one.piece())).toList());
  }
}
