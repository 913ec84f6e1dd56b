package vestiary.plan;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.allocation.plan.Score;
import vestiary.cluster.Church;
import vestiary.people.Person;
import vestiary.planning.SpanToCheck;
import vestiary.pool.CarriedPiece;
import vestiary.schedule.DatedMass;
import vestiary.vesting.Role;

/**
 * A plan as the API writes it.
 *
 * @param status queued, running, proven, stopped or failed
 * @param keep whether it leaves alone whatever no change has touched
 * @param score absent until there is a first plan
 * @param leftOut what is lawfully left out, each with its norm
 * @param difference against what is planned now, by church and time; empty once it is applied
 * @param unmet what nothing lawful serves
 * @param toTakeHome what lies away from home in the end; somebody who passes may take it
 */
record PlanBody(
    String id,
    String from,
    String to,
    String status,
    boolean keep,
    boolean applied,
    String failure,
    Score score,
    Score bounds,
    List<Assignment> assignments,
    List<Assignment> leftOut,
    List<Assignment> unmet,
    List<MovementBody> movements,
    List<Change> difference,
    List<RestingBody> toTakeHome,
    List<String> contradictions) {

  /**
   * One thing that would be otherwise than it is planned now.
   *
   * @param church short name of the church where it is worn or carried to
   * @param mass absent for a journey
   */
  record Change(String church, String mass, String sentence) {}

  /**
   * Who wears what.
   *
   * @param person short name of the celebrant; absent for whoever is only counted
   * @param number of the person within the role, from 1
   * @param piece absent where none is worn
   * @param step how far down the ladder of lawful substitutes; 0 for what is asked
   * @param substitute the step's id; absent for what is asked
   */
  record Assignment(
      String mass,
      String role,
      int number,
      String person,
      String kind,
      String piece,
      String set,
      int step,
      String substitute,
      String source,
      Boolean held,
      List<String> why) {}

  /**
   * @param carriedNow what is carried by the plan that holds
   */
  static PlanBody of(PlanFound plan, SpanToCheck span, List<CarriedPiece> carriedNow) {
    Writing writing = new Writing(span);
    PlanResult result = plan.result();
    return new PlanBody(
        plan.id(),
        plan.first().toString(),
        plan.last().toString(),
        plan.state().id(),
        plan.keeping(),
        plan.applied(),
        plan.failure().isEmpty() ? null : plan.failure(),
        plan.findProgress().map(Progress::score).orElse(null),
        plan.findProgress().map(Progress::bounds).orElse(null),
        result.worn().stream().map(writing::worn).toList(),
        result.leftOut().stream().map(writing::lacking).toList(),
        result.unmet().stream().map(writing::lacking).toList(),
        result.trips().stream()
            .sorted(Comparator.comparing(PlanResult.Trip::leaveBy))
            .map(writing::trip)
            .toList(),
        plan.isUsable() && !plan.applied()
            ? new DifferenceWords(span, new PlanDifference(span, result, carriedNow))
                .changes().stream().map(writing::change).toList()
            : List.of(),
        result.toTakeHome().stream().map(writing::resting).toList(),
        result.contradictions());
  }

  private static final class Writing {

    private final Map<UUID, DatedMass> masses;
    private final Map<UUID, Church> churches;
    private final ZoneId zone;

    Writing(SpanToCheck span) {
      this.masses =
          span.masses().stream()
              .collect(Collectors.toMap(m -> m.id().value(), Function.identity()));
      this.churches =
          span.churches().stream()
              .collect(Collectors.toMap(c -> c.id().value(), Function.identity()));
      this.zone = span.cluster().zone();
    }

    Assignment worn(PlanResult.Worn one) {
      return new Assignment(
          one.person().mass().toString(),
          one.person().role().id(),
          one.person().ordinal(),
          person(one.person()),
          one.kind().id(),
          one.piece(),
          one.set().isEmpty() ? null : one.set(),
          one.depth(),
          one.step().isEmpty() ? null : one.step(),
          one.source(),
          one.held(),
          one.why());
    }

    Assignment lacking(PlanResult.Lacking one) {
      return new Assignment(
          one.person().mass().toString(),
          one.person().role().id(),
          one.person().ordinal(),
          person(one.person()),
          one.kind().id(),
          null,
          null,
          one.depth(),
          one.step().isEmpty() ? null : one.step(),
          one.source(),
          null,
          null);
    }

    MovementBody trip(PlanResult.Trip one) {
      return new MovementBody(
          one.id().toString(),
          one.pieces(),
          slug(one.from()),
          slug(one.to()),
          one.ready().stream().map(this::local).findFirst().orElse(null),
          local(one.leaveBy()),
          local(one.arriveBy()),
          one.carrier().isEmpty() ? null : one.carrier(),
          one.carrier().isEmpty(),
          one.onAsking(),
          null,
          null,
          null,
          null,
          null);
    }

    Change change(DifferenceWords.Change one) {
      return new Change(
          slug(one.church()),
          one.mass().stream().findFirst().map(UUID::toString).orElse(null),
          one.sentence());
    }

    RestingBody resting(PlanResult.Resting one) {
      return new RestingBody(
          one.pieces(),
          slug(one.at()),
          slug(one.home()),
          one.since().stream().map(this::local).findFirst().orElse(null),
          null);
    }

    private String person(PlanResult.Person person) {
      boolean first = person.role() == Role.PRINCIPAL || person.role() == Role.MINISTER;
      DatedMass mass = masses.get(person.mass());
      return first && mass != null ? mass.findCelebrant().map(Person::slug).orElse(null) : null;
    }

    private String slug(UUID church) {
      return churches.get(church).slug();
    }

    private String local(Instant moment) {
      return moment.atZone(zone).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    }
  }
}
