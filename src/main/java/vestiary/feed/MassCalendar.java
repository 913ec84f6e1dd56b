package vestiary.feed;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.TimezoneAssignment;
import biweekly.property.Status;
import biweekly.util.Duration;
import com.github.mangstadt.vinnie.io.VObjectPropertyValues;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Date;
import java.util.List;
import java.util.TimeZone;
import vestiary.ordo.FoldedLines;

/**
 * Events of hours as a calendar file. The same events give the same bytes whenever they are asked
 * for.
 *
 * <p>Source: RFC 5545; the name and how often to ask again by RFC 7986, 5.1 and 5.7.
 */
public final class MassCalendar {

  private static final String PRODUCT = "-//Vestiary//Masses//EN";
  private static final java.time.Duration YEAR = java.time.Duration.ofDays(366);
  private static final int ASK_AGAIN_HOURS = 1;

  private MassCalendar() {}

  /**
   * The whole file, lines folded and ended as RFC 5545, 3.1 asks.
   *
   * @param events by start
   */
  public static String of(String name, ZoneId zone, List<CalendarEvent> events) {
    ICalendar calendar = new ICalendar();
    calendar.setProductId(PRODUCT);
    calendar.setName(name);
    calendar.setRefreshInterval(new Duration.Builder().hours(ASK_AGAIN_HOURS).build());
    calendar.setExperimentalProperty("X-WR-CALNAME", VObjectPropertyValues.escape(name));
    if (!events.isEmpty()) {
      Instant first = events.get(0).start().toInstant().minus(YEAR);
      Instant last = events.get(events.size() - 1).end().toInstant().plus(YEAR);
      calendar
          .getTimezoneInfo()
          .setDefaultTimezone(
              new TimezoneAssignment(
                  TimeZone.getTimeZone(zone), ZoneOfCalendar.of(zone, first, last)));
    }
    events.forEach(event -> calendar.addEvent(event(event)));
    return FoldedLines.of(Biweekly.write(calendar).foldLines(false).go());
  }

  private static VEvent event(CalendarEvent said) {
    VEvent event = new VEvent();
    event.setUid(said.uid());
    event.setSequence(said.sequence());
    event.setDateTimeStamp(Date.from(said.changed()));
    event.setLastModified(Date.from(said.changed()));
    event.setDateStart(Date.from(said.start().toInstant()));
    event.setDateEnd(Date.from(said.end().toInstant()));
    event.setSummary(said.summary());
    event.setLocation(said.place());
    if (!said.description().isEmpty()) {
      event.setDescription(said.description());
    }
    event.setStatus(said.cancelled() ? Status.cancelled() : Status.confirmed());
    event.setTransparency(!said.busy() || said.cancelled());
    return event;
  }
}
