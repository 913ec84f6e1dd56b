package vestiary.sending;

import static vestiary.web.Speech.say;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import vestiary.pool.Standing;
import vestiary.problem.Asked;
import vestiary.schedule.DatedMass;

/**
 * When something is to be back: as somebody said, or as is usual (common practice, no source): by
 * noon of the day after the Mass it goes for, in three days where it goes for none, and before it
 * is wanted again.
 */
final class DueBack {

  static final String FIELD = "due";

  private static final int USUAL_DAYS = 3;
  private static final LocalTime AFTER_MASS = LocalTime.NOON;

  /** Longer than that nothing is out; it is given. */
  private static final Duration LONGEST = Duration.ofDays(3 * 366L);

  private final Instant now;
  private final ZoneId zone;

  DueBack(Instant now, ZoneId zone) {
    this.now = now;
    this.zone = zone;
  }

  /**
   * As it was typed: a date means that day, to its end.
   *
   * @return empty if nothing was typed, or it is noted as a fault
   */
  Optional<Instant> find(String typed, Asked asked) {
    String text = asked.text(FIELD, typed, 40);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return within(moment(text), text, asked);
    } catch (DateTimeException e) {
      asked.fault(
          FIELD, say("due \"%s\" is no date; write it as 2026-12-08, or 2026-12-08T18:30.", text));
      return Optional.empty();
    }
  }

  private Optional<Instant> within(Instant due, String text, Asked asked) {
    if (!due.isAfter(now)) {
      asked.fault(FIELD, say("due %s is past already; it goes out now.", text));
      return Optional.empty();
    }
    if (due.isAfter(now.plus(LONGEST))) {
      asked.fault(FIELD, say("due %s lies more than three years ahead.", text));
      return Optional.empty();
    }
    return Optional.of(due);
  }

  private Instant moment(String text) {
    if (!text.contains("T")) {
      return LocalDate.parse(text).plusDays(1).atStartOfDay(zone).toInstant();
    }
    ZonedDateTime time =
        Asked.hasOffset(text)
            ? OffsetDateTime.parse(text).atZoneSameInstant(zone)
            : LocalDateTime.parse(text).atZone(zone);
    return time.toInstant();
  }

  /** The usual moment, before any other use that the pieces stand for. */
  Instant usual(Optional<DatedMass> mass, List<Standing> standing) {
    Instant wanted =
        mass.map(m -> m.end().toLocalDate().plusDays(1).atTime(AFTER_MASS).atZone(zone))
            .orElseGet(
                () -> LocalDate.ofInstant(now, zone).plusDays(USUAL_DAYS + 1L).atStartOfDay(zone))
            .toInstant();
    Instant free = mass.map(m -> m.end().toInstant()).orElse(now);
    return standing.stream()
        .filter(one -> mass.isPresent() || one.state() != Standing.State.PLANNED)
        .map(Standing::from)
        .filter(from -> from.isAfter(free) && from.isAfter(now))
        .filter(from -> from.isBefore(wanted))
        .min(Instant::compareTo)
        .orElse(wanted.isAfter(now) ? wanted : now.plus(Duration.ofDays(USUAL_DAYS)));
  }
}
