package vestiary.remedy;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.Shortage;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.planner.Planner;
import vestiary.allocation.remedy.Change;
import vestiary.allocation.remedy.Leeway;
import vestiary.allocation.remedy.Remedies;
import vestiary.allocation.remedy.Remedy;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;
import vestiary.plan.SituationOf;
import vestiary.planning.SpanToCheck;
import vestiary.pool.PlannedWear;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;
import vestiary.vesting.Window;

/**
 * What the core is asked about a shortage. All that is planned is held: a remedy changes nothing of
 * it unless it says so.
 */
record RemedyQuestion(Shortage shortage, Situation situation, Leeway leeway) {

  /** How far a Mass may be moved; common practice, no source. */
  private static final Duration MOST_SHIFT = Duration.ofHours(2);

  /** No Mass is moved to before or after these hours; common practice, no source. */
  private static final LocalTime EARLIEST = LocalTime.of(6, 0);

  private static final LocalTime LATEST = LocalTime.of(22, 0);

  /**
   * @param span the dates of the shortage and no others
   */
  static RemedyQuestion of(Shortage shortage, SpanToCheck span) {
    return new Asking(shortage, span).question();
  }

  /** Best first. */
  List<Remedy> answer() {
    return new Remedies(Planner.onThisMachine()).find(shortage, situation, leeway);
  }

  private record Asking(Shortage shortage, SpanToCheck span) {

    RemedyQuestion question() {
      Situation planned = SituationOf.span(span);
      List<Hold> holds = new ArrayList<>(planned.holds());
      holds.addAll(ofPlan());
      return new RemedyQuestion(
          shortage, planned.withHolds(holds), new Leeway(MOST_SHIFT, colours(), taken(), open()));
    }

    /** What is planned for these dates and still fits its Mass. */
    private List<Hold> ofPlan() {
      Map<MassId, DatedMass> masses =
          span.asked().stream().collect(Collectors.toMap(DatedMass::id, Function.identity()));
      return span.taken().planned().stream()
          .filter(one -> masses.containsKey(one.wearer().mass()))
          .filter(one -> fits(one, masses.get(one.wearer().mass())))
          .map(one -> hold(one, masses.get(one.wearer().mass())))
          .toList();
    }

    private static boolean fits(PlannedWear one, DatedMass mass) {
      return one.church().equals(mass.church().id())
          && !one.from().isAfter(mass.start().toInstant())
          && !one.until().isBefore(mass.end().toInstant());
    }

    private static Hold hold(PlannedWear one, DatedMass mass) {
      return new Hold(
          one.piece(),
          mass.id(),
          one.church(),
          new Window(one.from(), mass.start().toInstant(), mass.end().toInstant(), one.until()));
    }

    private List<Leeway.Open> open() {
      return span.shortages().stream()
          .filter(other -> !other.equals(shortage))
          .flatMap(other -> Leeway.Open.of(other).stream())
          .distinct()
          .toList();
    }

    /** On a rose day violet is a step of the ladder already. */
    private List<Change.ChooseColour> colours() {
      return concerned()
          .filter(mass -> !mass.option().colours().contains(Colour.ROSE))
          .flatMap(mass -> colours(mass).stream())
          .toList();
    }

    private List<Change.ChooseColour> colours(DatedMass mass) {
      return mass.option().colours().stream()
          .filter(colour -> colour != mass.colour())
          .map(
              colour ->
                  new Change.ChooseColour(
                      mass.id(),
                      colour,
                      span.needs(mass.with(colour)),
                      !mass.chosen().colour().isEmpty()))
          .toList();
    }

    private Stream<DatedMass> concerned() {
      return span.asked().stream().filter(mass -> shortage.masses().contains(mass.id()));
    }

    private List<Leeway.Taken> taken() {
      return concerned().flatMap(mass -> taken(mass).stream()).toList();
    }

    private List<Leeway.Taken> taken(DatedMass mass) {
      List<Leeway.Taken> taken = new ArrayList<>();
      for (DatedMass other : span.masses()) {
        if (!other.id().equals(mass.id())) {
          taken(mass, other).forEach(taken::add);
        }
      }
      ZonedDateTime midnight = mass.date().atStartOfDay(mass.start().getZone());
      ZonedDateTime next = midnight.plusDays(1);
      Instant morning = midnight.with(EARLIEST).toInstant();
      Instant night = midnight.with(LATEST).toInstant();
      taken.add(new Leeway.Taken(mass.id(), midnight.minusDays(1).toInstant(), morning));
      taken.add(new Leeway.Taken(mass.id(), night, next.plusDays(1).toInstant()));
      evening(mass).ifPresent(taken::add);
      return taken;
    }

    private Stream<Leeway.Taken> taken(DatedMass mass, DatedMass other) {
      if (other.church().id().equals(mass.church().id())) {
        return Stream.of(
            new Leeway.Taken(mass.id(), other.start().toInstant(), other.end().toInstant()));
      }
      boolean same =
          mass.findCelebrant().isPresent() && mass.findCelebrant().equals(other.findCelebrant());
      if (!same) {
        return Stream.empty();
      }
      Duration there =
          span.journeys().find(mass.church().id(), other.church().id()).orElse(Duration.ZERO);
      Duration back =
          span.journeys().find(other.church().id(), mass.church().id()).orElse(Duration.ZERO);
      return Stream.of(
          new Leeway.Taken(
              mass.id(),
              other.start().toInstant().minus(there),
              other.end().toInstant().plus(back)));
    }

    /** A Mass of the evening before does not become one of the day, nor the other way about. */
    private Optional<Leeway.Taken> evening(DatedMass mass) {
      if (!mass.ruling().day().evening().tomorrow() && mass.kind() != MassKind.ANTICIPATED) {
        return Optional.empty();
      }
      ZonedDateTime midnight = mass.date().atStartOfDay(mass.start().getZone());
      ZonedDateTime evening = midnight.with(span.cluster().calendar().evenings().from());
      boolean before = mass.start().isBefore(evening);
      return Optional.of(
          before
              ? new Leeway.Taken(mass.id(), evening.toInstant(), midnight.plusDays(1).toInstant())
              : new Leeway.Taken(mass.id(), midnight.toInstant(), evening.toInstant()));
    }
  }
}
