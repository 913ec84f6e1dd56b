package vestiary.telling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The letters of the week leave at nine by the church's clock, whatever the clocks do. */
class TellingTest {

  private static final Telling FRIDAYS =
      new Telling(DayOfWeek.FRIDAY, LocalTime.of(9, 0), 10, false);

  /**
   * Clocks go back on 1 November 2026 in Chicago and on 25 October in Madrid, forward on 14 March
   * 2027 and 28 March (IANA time zone database).
   */
  @ParameterizedTest
  @CsvSource({
    "2026-10-30T14:00:00Z[America/Chicago], 2026-10-30T14:00:00Z",
    "2026-10-30T13:59:59Z[America/Chicago], 2026-10-23T14:00:00Z",
    "2026-11-06T15:00:00Z[America/Chicago], 2026-11-06T15:00:00Z",
    "2026-11-06T14:30:00Z[America/Chicago], 2026-10-30T14:00:00Z",
    "2027-03-19T14:00:00Z[America/Chicago], 2027-03-19T14:00:00Z",
    "2026-10-23T07:00:00Z[Europe/Madrid], 2026-10-23T07:00:00Z",
    "2026-10-30T07:30:00Z[Europe/Madrid], 2026-10-23T07:00:00Z",
    "2026-10-30T08:00:00Z[Europe/Madrid], 2026-10-30T08:00:00Z",
    "2027-04-02T07:00:00Z[Europe/Madrid], 2027-04-02T07:00:00Z",
    "2027-04-01T22:00:00Z[Europe/Madrid], 2027-03-26T08:00:00Z",
  })
  void nine_o_clock_on_friday_is_nine_o_clock(String now, String due) {
    String[] parts = now.split("\\[");
    ZonedDateTime local =
        java.time.Instant.parse(parts[0]).atZone(java.time.ZoneId.of(parts[1].replace("]", "")));

    assertEquals(due, FRIDAYS.lastDue(local).toInstant().toString());
  }
}
