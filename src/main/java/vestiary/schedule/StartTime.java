package vestiary.schedule;

import static vestiary.web.Speech.say;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Reads when a Mass begins. */
final class StartTime {

  private StartTime() {}

  /**
   * A moment from text such as {@code 2026-12-08T18:30}, in the cluster's zone unless it carries an
   * offset of its own. When the clocks go back, the earlier of the two such hours is meant.
   *
   * @return the moment; the epoch if {@code asked} has noted a fault
   * @throws Refused if no clock of the zone shows that hour, since the clocks go forward then
   */
  static Instant parse(String text, ZoneId zone, Asked asked) {
    String start = asked.needed("start", text, 40);
    if (start.isEmpty()) {
      return Instant.EPOCH;
    }
    try {
      Instant moment =
          Asked.hasOffset(start)
              ? OffsetDateTime.parse(start).toInstant()
              : local(LocalDateTime.parse(start), zone);
      return within(moment, zone, asked);
    } catch (DateTimeParseException e) {
      asked.fault(
          "start", say("start \"%s\" is no date and time; write it as 2026-12-08T18:30.", start));
      return Instant.EPOCH;
    } catch (DateTimeException | ArithmeticException e) {
      asked.fault("start", say("start \"%s\" lies too far away.", start));
      return Instant.EPOCH;
    }
  }

  private static Instant local(LocalDateTime time, ZoneId zone) {
    List<ZoneOffset> offsets = zone.getRules().getValidOffsets(time);
    if (offsets.isEmpty()) {
      throw new Refused(
          new Refusal.AgainstRule(
              "start",
              say(
                  "On %s no clock in %s shows %s: the clocks go forward over it. Choose an hour before or after.",
                  time.toLocalDate(), zone, time.toLocalTime())));
    }
    return ZonedDateTime.ofLocal(time, zone, offsets.get(0)).toInstant();
  }

  private static Instant within(Instant moment, ZoneId zone, Asked asked) {
    var date = moment.atZone(zone).toLocalDate();
    // A day's margin, since an evening belongs to the next day.
    if (date.isBefore(LiturgicalCalendar.FIRST) || !date.isBefore(LiturgicalCalendar.LAST)) {
      asked.fault(
          "start",
          say(
              "start lies on %s; the calendar is known from %s to %s.",
              date, LiturgicalCalendar.FIRST, LiturgicalCalendar.LAST.minusDays(1)));
      return Instant.EPOCH;
    }
    return moment;
  }
}
