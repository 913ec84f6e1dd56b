package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.dmfs.rfc5545.DateTime;
import org.dmfs.rfc5545.recur.InvalidRecurrenceRuleException;
import org.dmfs.rfc5545.recur.RecurrenceRule;
import org.dmfs.rfc5545.recur.RecurrenceRuleIterator;

/** The lists of the invented cluster, and the days of its patterns. */
final class DemoLists {

  static final ZoneId ZONE = ZoneId.of("America/Chicago");

  static final List<ChurchLine> CHURCHES = good(ChurchLine.read(demo("churches")));
  static final List<PersonLine> PEOPLE = good(PersonLine.read(demo("people")));
  static final List<PatternLine> PATTERNS = good(PatternLine.read(demo("patterns")));
  static final List<PieceLine> PIECES = good(PieceLine.read(demo("pieces")));

  private DemoLists() {}

  static <T> List<T> good(Reading<T> reading) {
    assertEquals(List.of(), reading.bad());
    assertEquals(List.of(), reading.unknownColumns());
    return reading.lines();
  }

  static byte[] demo(String list) {
    return read("demo-data/" + list + ".csv");
  }

  static byte[] scenario(String list) {
    return read("scenario/" + list + ".csv");
  }

  static boolean isChurch(String slug) {
    return CHURCHES.stream().anyMatch(c -> c.slug().equals(slug));
  }

  /** When a pattern's Masses begin; days are reckoned by the library, the clock is the church's. */
  static List<ZonedDateTime> starts(PatternLine pattern, LocalDate first, LocalDate endExclusive) {
    List<ZonedDateTime> starts = new ArrayList<>();
    RecurrenceRuleIterator days = rule(pattern).iterator(day(pattern.starts()));
    days.fastForward(day(first));
    while (days.hasNext() && days.peekDateTime().before(day(endExclusive))) {
      DateTime next = days.nextDateTime();
      LocalDate date = LocalDate.of(next.getYear(), next.getMonth() + 1, next.getDayOfMonth());
      starts.add(date.atTime(pattern.time()).atZone(ZONE));
    }
    return starts;
  }

  private static RecurrenceRule rule(PatternLine pattern) {
    try {
      return new RecurrenceRule(pattern.rrule());
    } catch (InvalidRecurrenceRuleException bad) {
      throw new AssertionError(bad);
    }
  }

  private static DateTime day(LocalDate date) {
    return new DateTime(date.getYear(), date.getMonthValue() - 1, date.getDayOfMonth());
  }

  private static byte[] read(String resource) {
    try (InputStream file = DemoLists.class.getClassLoader().getResourceAsStream(resource)) {
      return file.readAllBytes();
    } catch (IOException unreadable) {
      throw new AssertionError(unreadable);
    }
  }
}
