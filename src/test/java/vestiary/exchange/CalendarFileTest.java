package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CalendarFileTest {

  private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
  private static final CalendarSpan DECEMBER =
      new CalendarSpan("", LocalDate.of(2026, 12, 1), LocalDate.of(2026, 12, 31));

  /** How a beginning is written, and which local time in Chicago that is. */
  @ParameterizedTest
  @CsvSource({
    "DTSTART:20261206T103000, 2026-12-06T10:30",
    "DTSTART:20261206T163000Z, 2026-12-06T10:30",
    "DTSTART;TZID=America/Chicago:20261206T103000, 2026-12-06T10:30",
    "DTSTART;TZID=Europe/Berlin:20261206T103000, 2026-12-06T03:30",
  })
  void a_beginning_is_read_by_its_zone(String start, String local) {
    CalendarFile.Read read = read("UID:1|SUMMARY:Mass|" + start);

    assertEquals(List.of(), read.bad());
    assertEquals(List.of(local), starts(read));
  }

  @Test
  void a_rule_without_end_is_followed_through_the_span_at_the_same_local_time() {
    CalendarFile.Read read =
        read(
            "UID:1|SUMMARY:Mass|DTSTART;TZID=America/Chicago:20260607T103000|RRULE:FREQ=WEEKLY;BYDAY=SU"
                + "|EXDATE;TZID=America/Chicago:20261213T103000");

    assertEquals(List.of("2026-12-06T10:30", "2026-12-20T10:30", "2026-12-27T10:30"), starts(read));
  }

  @Test
  void one_time_of_a_rule_may_be_moved_or_cancelled() {
    CalendarFile.Read read =
        CalendarFileTest.read(
            "UID:1|SUMMARY:Mass|DTSTART:20261206T103000|RRULE:FREQ=WEEKLY;COUNT=3",
            "UID:1|SUMMARY:Mass|RECURRENCE-ID:20261213T103000|DTSTART:20261213T090000|SEQUENCE:1",
            "UID:1|SUMMARY:Mass|RECURRENCE-ID:20261220T103000|DTSTART:20261220T103000|STATUS:CANCELLED");

    assertEquals(List.of("2026-12-06T10:30", "2026-12-13T09:00", "2026-12-20T10:30"), starts(read));
    assertTrue(read.masses().get(2).cancelled());
    assertEquals("2026-12-13T16:30:00Z", read.masses().get(1).origin().instance());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "UID:1|DTSTART,VALUE=DATE:20261206; It has a day and no hour",
        "UID:1|SUMMARY:Mass; It has no beginning",
        "DTSTART:20261206T103000; It has no name of its own",
        "UID:1|DTSTART,TZID=Middle-earth/Shire:20261206T103000; Its time zone \"Middle-earth/Shire\"",
      })
  void what_cannot_be_understood_is_said_of_its_event(String event, String reason) {
    CalendarFile.Read read = read(event.replace("DTSTART,", "DTSTART;"));

    assertEquals(List.of(), read.masses());
    assertTrue(read.bad().get(0).reason().startsWith(reason), read.bad().toString());
    assertEquals(1, read.bad().get(0).line());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "FREQ=SECONDLY",
        "FREQ=MINUTELY;INTERVAL=1",
        "FREQ=DAILY;BYHOUR=0,1,2,3,4,5;BYMINUTE=1,2,3,4;BYSECOND=1,2,3",
      })
  void a_rule_that_no_mass_has_is_refused_at_once(String rule) {
    CalendarFile.Read read =
        assertTimeoutPreemptively(
            Duration.ofSeconds(10), () -> read("UID:1|DTSTART:19700101T000000|RRULE:" + rule));

    assertEquals(List.of(), read.masses());
    assertEquals(1, read.bad().size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30", "FREQ=DAILY;INTERVAL=100000", "FREQ=DAILY"})
  void a_rule_that_never_comes_to_an_end_does(String rule) {
    assertTimeoutPreemptively(
        Duration.ofSeconds(20), () -> read("UID:1|DTSTART:00010101T000000|RRULE:" + rule));
  }

  @Test
  void a_zone_that_changes_its_clocks_each_second_is_refused() {
    byte[] file =
        Ics.calendar(
            "BEGIN:VTIMEZONE\r\nTZID:X\r\nBEGIN:STANDARD\r\nDTSTART:16010101T000000\r\nRRULE:FREQ=SECON\r\n DLY\r\n"
                + "TZOFFSETFROM:+0100\r\nTZOFFSETTO:+0000\r\nEND:STANDARD\r\nEND:VTIMEZONE\r\n"
                + "BEGIN:VEVENT\r\nUID:1\r\nDTSTART;TZID=X:20261206T103000\r\nEND:VEVENT\r\n");

    assertTimeoutPreemptively(
        Duration.ofSeconds(10),
        () -> assertThrows(BadFile.class, () -> CalendarFile.read(file, CHICAGO, DECEMBER)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "church,date\nht,2026-12-06",
        "BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\nUID:1\r\n",
        "BEGIN:VCALENDAR\r\nEND:VCALENDAR",
        "PK\u0003\u0004",
        "\u0000\u0001",
      })
  void what_is_no_calendar_is_refused(String text) {
    assertThrows(BadFile.class, () -> CalendarFile.count(text.getBytes(StandardCharsets.UTF_8)));
  }

  @ParameterizedTest
  @CsvSource({
    "Sunday Mass, ''",
    "Wedding of Anna and Karl, wedding",
    "'Mass, wedding of two', wedding",
    "Heilige Messe, ''",
    "Firmung, confirmation",
    "Misa de difuntos, dead",
    "Vorabendmesse, anticipated",
  })
  void the_title_tells_which_mass_it_is(String summary, String kind) {
    assertEquals(kind, EventWords.findKind(summary).orElseThrow());
  }

  @Test
  void a_meeting_is_no_mass() {
    assertTrue(EventWords.findKind("Parish council").isEmpty());
  }

  private static CalendarFile.Read read(String... events) {
    try {
      return CalendarFile.read(Ics.file(events), CHICAGO, DECEMBER);
    } catch (BadFile bad) {
      throw new AssertionError(bad);
    }
  }

  private static List<String> starts(CalendarFile.Read read) {
    return read.masses().stream().map(mass -> mass.start().toString()).toList();
  }
}
