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
import vestiary.access.CurrentCluster;

/** Counts how often journeys have changed, of which no row is kept. */
@ApplicationScoped
class StampEvents {

  /** Longer than calendars go back. */
  private static final Duration KEPT = Duration.ofDays(60);

  private final EventStampRows rows;
  private final CurrentCluster cluster;
  private final Clock clock;

  StampEvents(EventStampRows rows, CurrentCluster cluster, Clock clock) {
    this.rows = rows;
    this.cluster = cluster;
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
    List<CalendarEvent> changed = changed(events, known);
    if (!changed.isEmpty()) {
      count(changed);
      known.values().forEach(rows.getEntityManager()::detach);
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

  private void count(List<CalendarEvent> changed) {
    Instant now = clock.instant();
    rows.forget(now.minus(KEPT));
    UUID here = cluster.id();
    changed.stream()
        .sorted(java.util.Comparator.comparing(StampEvents::id))
        .forEach(event -> rows.count(here, id(event), digest(event), now, event.end().toInstant()));
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
