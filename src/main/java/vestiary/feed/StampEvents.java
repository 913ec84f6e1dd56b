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

/**
 * Counts how often events have changed of which no row is kept: journeys, and that somebody is away
 * from a Mass.
 */
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
   * Of what changes are counted.
   *
   * @param ends after which it is forgotten some day
   * @param digest another one is a change
   */
  private record Counted(UUID id, Instant ends, String digest) {

    static Counted of(String name, CalendarEvent event) {
      return new Counted(
          UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)),
          event.end().toInstant(),
          StampEvents.digest(event));
    }

    boolean isAsKnown(Map<UUID, EventStampRow> known) {
      return known.containsKey(id) && known.get(id).digest.equals(digest);
    }
  }

  /**
   * The same events with their counts. Nothing is written while they are as they were when they
   * were asked for last.
   *
   * @param events each with a UID that is its own for ever
   */
  @Transactional(Transactional.TxType.MANDATORY)
  List<CalendarEvent> stamp(List<CalendarEvent> events) {
    List<Counted> all = events.stream().map(event -> Counted.of(event.uid(), event)).toList();
    Map<UUID, EventStampRow> known = count(all, rows.byId(ids(all)));
    List<CalendarEvent> stamped = new ArrayList<>();
    for (int i = 0; i < events.size(); i++) {
      EventStampRow row = known.get(all.get(i).id());
      stamped.add(events.get(i).stamped(row.sequence, row.changedAt));
    }
    return stamped;
  }

  /**
   * Masses of one person, whose own counts know nothing of it that he is away or back: of those
   * from which he was ever found away, every change of what his calendar says is counted besides.
   * Both counts only grow, and so does their sum (RFC 5545, 3.8.7.4).
   *
   * @param masses he is away from those that leave him free
   */
  @Transactional(Transactional.TxType.MANDATORY)
  List<CalendarEvent> countAway(List<CalendarEvent> masses, UUID person) {
    List<Counted> all =
        masses.stream().map(mass -> Counted.of(mass.uid() + " " + person, mass)).toList();
    Map<UUID, EventStampRow> before = rows.byId(ids(all));
    List<Counted> away = new ArrayList<>();
    for (int i = 0; i < masses.size(); i++) {
      if (!masses.get(i).busy() || before.containsKey(all.get(i).id())) {
        away.add(all.get(i));
      }
    }
    Map<UUID, EventStampRow> known = count(away, before);
    List<CalendarEvent> stamped = new ArrayList<>();
    for (int i = 0; i < masses.size(); i++) {
      EventStampRow row = known.get(all.get(i).id());
      stamped.add(row == null ? masses.get(i) : countedOn(masses.get(i), row));
    }
    return stamped;
  }

  /** That he was found away for the first time is a change already. */
  private static CalendarEvent countedOn(CalendarEvent mass, EventStampRow row) {
    return mass.stamped(
        mass.sequence() + 1 + row.sequence,
        row.changedAt.isAfter(mass.changed()) ? row.changedAt : mass.changed());
  }

  /** Counts what has changed, and gives what is known then. */
  private Map<UUID, EventStampRow> count(List<Counted> all, Map<UUID, EventStampRow> before) {
    if (all.stream().allMatch(one -> one.isAsKnown(before))) {
      return before;
    }
    before.values().forEach(rows.getEntityManager()::detach);
    // Two programs may ask at the same moment, and one change is counted once.
    turns.waitForTurn();
    Map<UUID, EventStampRow> known = rows.byId(ids(all));
    note(all.stream().filter(one -> !one.isAsKnown(known)).toList(), known);
    return rows.byId(ids(all));
  }

  private static List<UUID> ids(List<Counted> all) {
    return all.stream().map(Counted::id).toList();
  }

  private void note(List<Counted> changed, Map<UUID, EventStampRow> known) {
    Instant now = clock.instant();
    for (Counted one : changed) {
      EventStampRow row = known.get(one.id());
      if (row == null) {
        row = new EventStampRow();
        row.id = one.id();
        note(row, one, now);
        rows.persist(row);
      } else {
        row.sequence++;
        note(row, one, now);
      }
    }
    rows.flush();
    rows.forget(now.minus(KEPT));
  }

  private static void note(EventStampRow row, Counted one, Instant now) {
    row.changedAt = now;
    row.endsAt = one.ends();
    row.digest = one.digest();
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
