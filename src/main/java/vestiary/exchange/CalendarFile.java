package vestiary.exchange;

import static vestiary.web.Speech.say;

import biweekly.component.VEvent;
import biweekly.property.DateStart;
import biweekly.property.RecurrenceProperty;
import biweekly.util.Frequency;
import biweekly.util.ICalDate;
import biweekly.util.Recurrence;
import biweekly.util.com.google.ical.compat.javautil.DateIterator;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The events of an iCalendar file, each time that they take place within a span of dates. Source:
 * RFC 5545.
 */
final class CalendarFile {

  /** More than any calendar of Masses has in two years. */
  static final int MOST = 20_000;

  /** Fifty years of every day: a rule that has not come to the span by then is none of Masses. */
  private static final int MOST_STEPS = 20_000;

  private static final int LONGEST_SUMMARY = 80;

  private static final Set<Frequency> DAILY_OR_RARER =
      Set.of(Frequency.DAILY, Frequency.WEEKLY, Frequency.MONTHLY, Frequency.YEARLY);

  private final ZoneId zone;
  private final CalendarSpan span;
  private final List<CalendarMass> masses = new ArrayList<>();
  private final List<BadLine> bad = new ArrayList<>();

  private CalendarFile(ZoneId zone, CalendarSpan span) {
    this.zone = zone;
    this.span = span;
  }

  /**
   * @param masses each time, in the order of the file
   * @param bad events that cannot be understood, by their number in the file
   */
  record Read(List<CalendarMass> masses, List<BadLine> bad) {
    Read {
      masses = List.copyOf(masses);
      bad = List.copyOf(bad);
    }

    /** By start, then as in the file. */
    List<CalendarMass> inOrder() {
      return masses.stream().sorted(Comparator.comparing(CalendarMass::start)).toList();
    }
  }

  /** How many events there are; at least one. */
  static int count(byte[] file) throws BadFile {
    return CalendarEvents.parse(file, ZoneId.of("UTC")).size();
  }

  /**
   * Reads the events of a span.
   *
   * @param zone of the cluster, in which times without a zone are meant
   */
  static Read read(byte[] file, ZoneId zone, CalendarSpan span) throws BadFile {
    CalendarFile calendar = new CalendarFile(zone, span);
    calendar.readAll(CalendarEvents.parse(file, zone));
    return new Read(calendar.masses, calendar.bad);
  }

  private void readAll(List<CalendarEvents.Found> events) {
    Map<String, Map<Instant, CalendarEvents.Found>> moved = new HashMap<>();
    for (CalendarEvents.Found found : events) {
      if (found.event().getRecurrenceId() != null) {
        moved
            .computeIfAbsent(uid(found), unknown -> new HashMap<>())
            .merge(
                found.event().getRecurrenceId().getValue().toInstant(),
                found,
                (one, other) -> sequence(one) > sequence(other) ? one : other);
      }
    }
    for (CalendarEvents.Found found : events) {
      if (masses.size() > MOST) {
        bad.add(
            new BadLine(found.number(), "", say("The events from here on were not looked at.")));
        return;
      }
      if (found.event().getRecurrenceId() == null) {
        read(found, moved.getOrDefault(uid(found), new HashMap<>()));
      }
    }
    // Single times of a rule that is not in the file itself.
    moved.forEach(
        (uid, instances) ->
            instances.forEach((instance, found) -> readOne(found, instance.toString())));
  }

  private void read(CalendarEvents.Found found, Map<Instant, CalendarEvents.Found> moved) {
    Optional<String> fault = fault(found);
    if (fault.isPresent()) {
      refuse(found, fault.get());
      moved.clear();
      return;
    }
    if (found.event().getRecurrenceRule() == null && found.event().getRecurrenceDates().isEmpty()) {
      readOne(found, "");
      return;
    }
    java.util.TimeZone rulesIn = zoneOf(found);
    DateIterator times = found.event().getDateIterator(rulesIn);
    Instant last = span.to().plusDays(1).atStartOfDay(zone).toInstant();
    for (int step = 0; times.hasNext(); step++) {
      Instant time = times.next().toInstant();
      if (!time.isBefore(last)) {
        break;
      }
      if (step > MOST_STEPS || masses.size() > MOST) {
        refuse(found, say("It recurs more often than can be brought in; choose fewer days."));
        break;
      }
      CalendarEvents.Found instead = moved.remove(time);
      if (instead != null) {
        readOne(instead, time.toString());
      } else {
        add(found, time, time.toString());
      }
    }
  }

  /** An event as it stands, without its rule. */
  private void readOne(CalendarEvents.Found found, String instance) {
    Optional<String> fault = fault(found);
    if (fault.isPresent()) {
      refuse(found, fault.get());
      return;
    }
    add(found, found.event().getDateStart().getValue().toInstant(), instance);
  }

  private void add(CalendarEvents.Found found, Instant time, String instance) {
    LocalDateTime start = LocalDateTime.ofInstant(time, zone);
    if (!span.holds(start.toLocalDate())) {
      return;
    }
    VEvent event = found.event();
    masses.add(
        new CalendarMass(
            found.number(),
            summary(found),
            new CalendarMass.Origin(uid(found), instance),
            sequence(found),
            start,
            minutes(event),
            event.getLocation() == null ? "" : text(event.getLocation().getValue()),
            event.getStatus() != null && event.getStatus().isCancelled()));
  }

  private Optional<String> fault(CalendarEvents.Found found) {
    VEvent event = found.event();
    DateStart start = event.getDateStart();
    if (start == null || start.getValue() == null) {
      return Optional.of(say("It has no beginning (DTSTART)."));
    }
    if (!start.getValue().hasTime()) {
      return Optional.of(say("It has a day and no hour; a Mass needs one."));
    }
    if (event.getUid() == null || text(event.getUid().getValue()).isEmpty()) {
      return Optional.of(say("It has no name of its own (UID), by which it would be known again."));
    }
    String zoneId = start.getParameter("TZID");
    if (zoneId != null && !isKnown(found, start)) {
      return Optional.of(
          say("Its time zone \"%s\" is not known; write one such as %s.", zoneId, zone));
    }
    return Stream.concat(
            Stream.ofNullable(event.getRecurrenceRule()), event.getExceptionRules().stream())
        .map(CalendarFile::ruleFault)
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<String> ruleFault(RecurrenceProperty property) {
    Recurrence rule = property.getValue();
    if (rule == null || !DAILY_OR_RARER.contains(rule.getFrequency())) {
      return Optional.of(say("It recurs more often than daily, which no Mass does."));
    }
    boolean dividesDays =
        !rule.getByHour().isEmpty()
            || !rule.getByMinute().isEmpty()
            || !rule.getBySecond().isEmpty();
    return dividesDays
        ? Optional.of(say("Its rule names hours; give each hour an event of its own."))
        : Optional.empty();
  }

  /** A zone that the file describes, or one of the public tz database. */
  private static boolean isKnown(CalendarEvents.Found found, DateStart start) {
    return found.calendar().getTimezoneInfo().getTimezone(start) != null
        || isZone(start.getParameter("TZID"));
  }

  private static boolean isZone(String id) {
    try {
      ZoneId.of(id);
      return true;
    } catch (DateTimeException unknown) {
      return false;
    }
  }

  private java.util.TimeZone zoneOf(CalendarEvents.Found found) {
    var assigned = found.calendar().getTimezoneInfo().getTimezone(found.event().getDateStart());
    return assigned == null ? java.util.TimeZone.getTimeZone(zone) : assigned.getTimeZone();
  }

  private static int minutes(VEvent event) {
    ICalDate start = event.getDateStart().getValue();
    if (event.getDateEnd() != null && event.getDateEnd().getValue() != null) {
      return (int)
          Duration.between(start.toInstant(), event.getDateEnd().getValue().toInstant())
              .toMinutes();
    }
    return event.getDuration() == null || event.getDuration().getValue() == null
        ? 0
        : (int) (event.getDuration().getValue().toMillis() / 60_000);
  }

  private static int sequence(CalendarEvents.Found found) {
    return found.event().getSequence() == null || found.event().getSequence().getValue() == null
        ? 0
        : found.event().getSequence().getValue();
  }

  private static String uid(CalendarEvents.Found found) {
    return found.event().getUid() == null ? "" : text(found.event().getUid().getValue());
  }

  private static String summary(CalendarEvents.Found found) {
    String summary =
        found.event().getSummary() == null ? "" : text(found.event().getSummary().getValue());
    return summary.length() > LONGEST_SUMMARY
        ? summary.substring(0, LONGEST_SUMMARY) + "…"
        : summary;
  }

  private static String text(String value) {
    return value == null ? "" : value.strip();
  }

  private void refuse(CalendarEvents.Found found, String sentence) {
    bad.add(new BadLine(found.number(), summary(found), sentence));
  }
}
