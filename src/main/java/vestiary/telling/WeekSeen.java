package vestiary.telling;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import vestiary.plan.PlanResult;
import vestiary.plan.TripWords;
import vestiary.planning.SpanToCheck;
import vestiary.pool.PlannedWear;
import vestiary.schedule.DatedMass;

/**
 * The days that a letter of the week tells of, loaded once for all readers.
 *
 * @param trips journeys of these days, by the hour of leaving
 */
record WeekSeen(SpanToCheck span, List<PlanResult.Trip> trips) {

  WeekSeen {
    trips = List.copyOf(trips);
  }

  ZoneId zone() {
    return span.cluster().zone();
  }

  LocalDate first() {
    return span.first();
  }

  LocalDate last() {
    return span.last();
  }

  TripWords words() {
    return new TripWords(span.churches(), span.pieces(), zone());
  }

  /** Sets by their own code, single pieces by theirs, the vestment before the stole. */
  List<String> names(Collection<String> pieces) {
    return words().names(pieces);
  }

  String church(UUID id) {
    return words().church(id);
  }

  ZonedDateTime local(Instant moment) {
    return moment.atZone(zone());
  }

  /** What plans name for a Mass. */
  List<PlannedWear> worn(DatedMass mass) {
    return span.taken().planned().stream()
        .filter(one -> one.wearer().mass().equals(mass.id()))
        .toList();
  }

  /** Codes of what somebody has set aside for it. */
  List<String> held(DatedMass mass) {
    return span.taken().setAside().stream()
        .filter(one -> one.masses().contains(mass.id()))
        .map(one -> one.piece())
        .toList();
  }
}
