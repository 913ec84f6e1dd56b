package vestiary.feed;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import vestiary.cluster.OneByOne;

/** Counts how often journeys have changed, of which no row is kept. */
@ApplicationScoped
class StampEvents {

  /** Longer than calendars go back. */
  private static final Duration KEPT = Duration.ofDays(60);

  private final EventStampRows rows;
  private final OneByOne turns;
  private final Clock clock;

  StampEvents(EventStampRows rows, OneByOne turns, Clock clock) {
    this.rows = rows;
    this.turns = turns;
    this.clock = clock;
  }

  /**
   * The same events with their counts. Nothing is written while they are as they were when they
   * were asked for last.
   *
   * @param events each with a UID that is its own for ever
   */
  @Transactional(Transactional.TxType.MANDATORY)
  List<CalendarEvent> stamp(List<CalendarEvent> events) {
    List<UUID> ids = events.stream().map(StampEvents::id).toList();
    Map<UUID, EventStampRow> known = rows.byId(ids);
    if (!changed(events, known).isEmpty()) {
      known.values().forEach(rows.getEntityManager()::detach);
      // Two programs may ask at the same moment, and one change is counted once.
      turns.waitForTurn();
      known = rows.byId(ids);
      count(changed(events, known), known);
      known = rows.byId(ids);
    }
    List<CalendarEvent> stamped = new ArrayList<>();
    for (CalendarEvent event : events) {
      EventStampRow row = known.get(id(event));
      stamped.add(event.stamped(row.sequence, row.changedAt));
    }
    return stamped;
  }

  private static List<CalendarEvent> changed(
      List<CalendarEvent> events, Map<UUID, EventStampRow> known) {
    return events.stream()
        .filter(event -> !known.containsKey(id(event)) || !isAsKnown(event, known))
        .toList();
  }

  private void count(List<CalendarEvent> changed, Map<UUID, EventStampRow> known) {
    Instant now = clock.instant();
    for (CalendarEvent event : changed) {
      EventStampRow row = known.get(id(event));
      if (row == null) {
        row = new EventStampRow();
        row.id = id(event);
        note(row, event, now);
        rows.persist(row);
      } else {
        row.sequence++;
        note(row, event, now);
      }
    }
    rows.flush();
    rows.forget(now.minus(KEPT));
  }

  private static void note(EventStampRow row, CalendarEvent event, Instant now) {
    row.changedAt = now;
    row.endsAt = event.end().toInstant();
    row.digest = digest(event);
  }

  private static boolean isAsKnown(CalendarEvent event, Map<UUID, EventStampRow> known) {
    return known.get(id(event)).digest.equals(digest(event));
  }

  private static UUID id(CalendarEvent event) {
    return UUID.nameUUIDFromBytes(event.uid().getBytes(StandardCharsets.UTF_8));
  }

  private static String digest(CalendarEvent event) {
    return FeedAnswer.digest(
        String.join(
            "\n",
            event.start().toInstant().toString(),
            event.end().toInstant().toString(),
            event.summary(),
            event.place(),
            event.description()));
  }
}
