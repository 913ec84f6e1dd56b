package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Source of the rules: RFC 5545, September 2009, section 3.3.10. */
class PatternLineTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "FREQ=WEEKLY;BYDAY=SU",
        "FREQ=WEEKLY;INTERVAL=2;BYDAY=SA",
        "FREQ=MONTHLY;BYDAY=1TH,3TH,4TH,5TH",
        "FREQ=MONTHLY;BYDAY=-1FR",
        "FREQ=YEARLY;BYMONTH=7,8;BYDAY=SU",
        "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=29",
        "FREQ=WEEKLY;BYDAY=MO;UNTIL=20271231",
        "FREQ=DAILY;COUNT=9"
      })
  void a_rule_that_says_days_is_kept(String rule) {
    Reading<PatternLine> reading = read(rule);

    assertEquals(List.of(), reading.bad());
    assertEquals(rule, reading.lines().get(0).rrule());
  }

  @Test
  void a_rule_in_small_letters_is_made_capital() {
    assertEquals("FREQ=WEEKLY;BYDAY=SU", read("freq=weekly;byday=su").lines().get(0).rrule());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '/',
      textBlock =
          """
          every Sunday                        / by RFC 5545
          RRULE:FREQ=DAILY                    / by RFC 5545
          FREQ=HOURLY                         / daily or rarer
          FREQ=DAILY;BYHOUR=9                 / stands apart
          FREQ=DAILY;UNTIL=20271231T000000Z   / UNTIL=20271231
          FREQ=DAILY;UNTIL=20200101           / no day on or after 2024-01-01
          FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30 / no day on or after 2024-01-01
          FREQ=MONTHLY;BYDAY=6TH              / no day on or after 2024-01-01
          """)
  void a_rule_that_says_something_else_is_refused(String rule, String wanted) {
    List<BadLine> bad = assertTimeout(Duration.ofSeconds(2), () -> read(rule)).bad();

    assertEquals(List.of("rrule"), bad.stream().map(BadLine::column).toList());
    assertTrue(bad.get(0).reason().startsWith("\"" + rule + "\""), bad.toString());
    assertTrue(bad.get(0).reason().contains(wanted), bad.toString());
  }

  @Test
  void the_same_recurrence_twice_is_refused() {
    Reading<PatternLine> reading =
        PatternLine.read(
            CsvTable.parse(
                Csv.file(
                    "church,rrule,starts,time,minutes",
                    "ht,FREQ=WEEKLY;BYDAY=SU,2024-01-07,10:30,60",
                    "ht,freq=weekly;byday=su,2024-01-07,10:30,45"),
                ImportWhat.PATTERNS));

    assertEquals(3, reading.bad().get(0).line());
  }

  private static Reading<PatternLine> read(String rule) {
    return PatternLine.parse(
        Csv.line(
            "church",
            "ht",
            "rrule",
            rule,
            "starts",
            "2024-01-01",
            "time",
            "10:30",
            "minutes",
            "60"));
  }
}
