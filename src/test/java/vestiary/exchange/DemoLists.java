package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import vestiary.pattern.Recurrence;

/** The lists of the invented cluster, and the days of its patterns. */
final class DemoLists {

  static final ZoneId ZONE = ZoneId.of("America/Chicago");

  static final List<ChurchLine> CHURCHES =
      good(ChurchLine.read(CsvTable.parse(demo("churches"), ImportWhat.CHURCHES), fortnight()));
  static final List<PersonLine> PEOPLE =
      good(PersonLine.read(CsvTable.parse(demo("people"), ImportWhat.PEOPLE)));
  static final List<PatternLine> PATTERNS =
      good(PatternLine.read(CsvTable.parse(demo("patterns"), ImportWhat.PATTERNS)));
  static final List<PieceLine> PIECES =
      good(PieceLine.read(CsvTable.parse(demo("pieces"), ImportWhat.PIECES)));

  private DemoLists() {}

  /** That which begins on Monday 30 November 2026, as far as it needs no calendar. */
  static DateWords fortnight() {
    return new FortnightWords(LocalDate.of(2026, 11, 30), (day, church) -> List.of());
  }

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

  /** When a pattern's Masses begin, by the clock of the church. */
  static List<ZonedDateTime> starts(PatternLine pattern, LocalDate first, LocalDate endExclusive) {
    return Recurrence.parse(pattern.rrule())
        .dates(pattern.starts(), first, endExclusive.minusDays(1))
        .stream()
        .map(date -> date.atTime(pattern.time()).atZone(ZONE))
        .toList();
  }

  private static byte[] read(String resource) {
    try (InputStream file = DemoLists.class.getClassLoader().getResourceAsStream(resource)) {
      return file.readAllBytes();
    } catch (IOException unreadable) {
      throw new AssertionError(unreadable);
    }
  }
}
