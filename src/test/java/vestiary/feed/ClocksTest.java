package vestiary.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.stream.IntStream;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.Observance;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.component.VTimeZone;
import net.fortuna.ical4j.model.property.TzOffsetTo;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import vestiary.scenario.Asking;

/**
 * A weekly Mass keeps its hour through the weeks in which the clocks change, as another library
 * reads it from the file's own time zone. That library registers zones once for a machine, so the
 * test runs where the others do that read calendars with it.
 */
@QuarkusTest
class ClocksTest {

  @ParameterizedTest
  @CsvSource({
    "America/Chicago, 2026-10-18",
    "America/Chicago, 2027-02-28",
    "Europe/Madrid, 2026-10-11",
    "Europe/Madrid, 2027-03-14",
    "America/New_York, 2027-02-28",
    "Asia/Kolkata, 2027-03-21",
  })
  void each_sunday_is_at_ten_by_the_church_s_clock(String zoneId, LocalDate first)
      throws Exception {
    ZoneId zone = ZoneId.of(zoneId);
    List<CalendarEvent> events =
        IntStream.range(0, 5)
            .mapToObj(week -> event(first.plusWeeks(week).atTime(10, 0).atZone(zone)))
            .toList();

    String file = MassCalendar.of("Masses", zone, events);

    Calendar read = new CalendarBuilder().build(new StringReader(file));
    assertFalse(read.validate().hasErrors(), () -> file);
    List<VEvent> found = read.getComponents(Component.VEVENT);
    VTimeZone said = Asking.only(read.<VTimeZone>getComponents(Component.VTIMEZONE));
    assertEquals(
        events.stream().map(event -> event.start().toInstant()).toList(),
        found.stream().map(event -> start(event, said)).toList());
    assertTrue(file.contains("DTSTART;TZID=" + zoneId + ":"), file);
    for (String line : file.split("\r\n")) {
      assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line);
    }
  }

  /** The clock's hour as it is written, by the rule of the file that holds at that moment. */
  private static Instant start(VEvent event, VTimeZone said) {
    LocalDateTime written =
        LocalDateTime.parse(
            event.getDateTimeStart().getValue(), DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss"));
    Observance holds = said.getApplicableObservance(written.toInstant(ZoneOffset.UTC));
    TzOffsetTo offset = holds.getRequiredProperty(Property.TZOFFSETTO);
    return written.toInstant(offset.getOffset());
  }

  private static CalendarEvent event(ZonedDateTime start) {
    return new CalendarEvent(
        start.toLocalDate() + "@masses",
        0,
        Instant.EPOCH,
        start,
        start.plusHours(1),
        "Sunday Mass; with commas, and ñ",
        "Holy Trinity, Wenlow",
        "A sentence that is long enough to be folded, since it has more than seventy-five octets.",
        false,
        true);
  }
}
