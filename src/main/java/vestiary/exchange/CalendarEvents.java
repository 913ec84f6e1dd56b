package vestiary.exchange;

import static vestiary.web.Speech.say;

import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalReader;
import java.io.IOException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;

/** The events of an iCalendar file as they stand in it, read with suspicion. */
final class CalendarEvents {

  private static final String BEGINS = "BEGIN:VCALENDAR";
  private static final String ZONE_BEGINS = "BEGIN:VTIMEZONE";

  /** All changes of a clock since there are any, and then some. */
  private static final int MOST_LINES_OF_ZONE = 5_000;

  private CalendarEvents() {}

  /**
   * @param number in the file, from 1
   */
  record Found(VEvent event, ICalendar calendar, int number) {}

  /**
   * Reads a whole file.
   *
   * @param zone in which times without a zone are meant
   */
  static List<Found> parse(byte[] file, ZoneId zone) throws BadFile {
    String text = CsvText.parseAny(file).text();
    if (!begins(text)) {
      throw new BadFile(
          1,
          say(
              "The file is no calendar: it does not begin with BEGIN:VCALENDAR. If it is a list, choose which; a calendar is saved in the form iCalendar (.ics)."));
    }
    if (!text.stripTrailing().toUpperCase(Locale.ROOT).endsWith("END:VCALENDAR")) {
      throw new BadFile(1, say("The calendar breaks off before its end; send the whole file."));
    }
    refuseRestlessZones(text);
    List<Found> events = new ArrayList<>();
    try (ICalReader reader = new ICalReader(text)) {
      reader.setDefaultTimezone(TimeZone.getTimeZone(zone));
      for (ICalendar calendar = reader.readNext(); calendar != null; calendar = reader.readNext()) {
        for (VEvent event : calendar.getEvents()) {
          events.add(new Found(event, calendar, events.size() + 1));
        }
      }
    } catch (IOException | RuntimeException unreadable) {
      throw new BadFile(
          1, say("The calendar cannot be read; save it anew from the program that made it."));
    }
    if (events.isEmpty()) {
      throw new BadFile(1, say("The calendar has no events."));
    }
    if (events.size() > CalendarFile.MOST) {
      throw new BadFile(
          1, say("The calendar has more than %,d events. Divide it.", CalendarFile.MOST));
    }
    return events;
  }

  /** Whether a text begins as a calendar does. */
  static boolean begins(String text) {
    return text.stripLeading().regionMatches(true, 0, BEGINS, 0, BEGINS.length());
  }

  /** The library goes through what a zone's rule yields while it reads a file. */
  private static void refuseRestlessZones(String text) throws BadFile {
    String whole = text.replaceAll("\\r?\\n[ \\t]", "").toUpperCase(Locale.ROOT);
    for (int at = whole.indexOf(ZONE_BEGINS); at >= 0; at = whole.indexOf(ZONE_BEGINS, at + 1)) {
      int end = whole.indexOf("END:VTIMEZONE", at);
      String zone = end < 0 ? whole.substring(at) : whole.substring(at, end);
      boolean isRestless =
          zone.lines()
              .filter(line -> line.startsWith("RRULE"))
              .anyMatch(line -> !line.contains("FREQ=YEARLY") || line.contains("BYHOUR"));
      if (isRestless || zone.lines().count() > MOST_LINES_OF_ZONE) {
        throw new BadFile(
            1, say("A time zone in the calendar changes its clocks more than a zone does."));
      }
    }
  }
}
