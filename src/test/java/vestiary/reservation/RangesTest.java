package vestiary.reservation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import vestiary.pool.SetAside;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Scenario;
import vestiary.vesting.ChurchId;

/**
 * What we call "at the same time" is what PostgreSQL calls so.
 *
 * <p>Source: PostgreSQL documentation, 9.20 (range operators) and 8.17 (bounds, infinite ranges).
 */
@QuarkusTest
class RangesTest {

  private static final int PAIRS = 600;

  @Inject OwnerDatabase database;

  @Test
  void two_times_overlap_where_postgresql_says_so() throws SQLException {
    Random random = new Random(1582);
    List<Instant> moments = moments();
    List<Stay> ones = new ArrayList<>();
    List<Stay> others = new ArrayList<>();
    for (int at = 0; at < PAIRS; at++) {
      ones.add(stay(moments, random));
      others.add(stay(moments, random));
    }
    StringBuilder rows = new StringBuilder();
    for (int at = 0; at < PAIRS; at++) {
      rows.append(at == 0 ? "" : ", ")
          .append("(%d, %s, %s)".formatted(at, range(ones.get(at)), range(others.get(at))));
    }

    List<String> theirs =
        Reserving.ask(
            database,
            "select (a && b)::text from (values %s) as pair (n, a, b) order by n".formatted(rows));

    List<String> ours = new ArrayList<>();
    for (int at = 0; at < PAIRS; at++) {
      Stay other = others.get(at);
      ours.add(String.valueOf(ones.get(at).isDuring(other.from(), other.until())));
    }
    assertEquals(theirs, ours);
    assertEquals(
        2, theirs.stream().collect(Collectors.groupingBy(said -> said)).size(), "both must occur");
    assertTrue(touching(ones, others) > 10, "few of them touch");
  }

  private static long touching(List<Stay> ones, List<Stay> others) {
    long touching = 0;
    for (int at = 0; at < PAIRS; at++) {
      touching += ones.get(at).until().equals(others.get(at).from()) ? 1 : 0;
    }
    return touching;
  }

  /** Every half hour over the night in which clocks go back, and one that never comes. */
  private static List<Instant> moments() {
    ZonedDateTime evening = ZonedDateTime.of(2026, 10, 31, 22, 0, 0, 0, Scenario.ZONE);
    List<Instant> moments = new ArrayList<>();
    for (int halfHours = 0; halfHours < 16; halfHours++) {
      moments.add(evening.plusMinutes(30L * halfHours).toInstant());
    }
    moments.add(Instant.MAX);
    return moments;
  }

  private static Stay stay(List<Instant> moments, Random random) {
    int from = random.nextInt(moments.size() - 1);
    Instant until = moments.get(from + 1 + random.nextInt(moments.size() - from - 1));
    SetAside held = new SetAside("HT-W1-C", List.of(), List.of(), moments.get(from), until, "held");
    return new Stay(
        new ChurchId(new UUID(0, 1)), List.of(), held.from(), held.until(), new Stay.Aside(held));
  }

  /** As the table has it: in the cluster's own clock with its offset, an open end as none. */
  private static String range(Stay stay) {
    String end = stay.until().equals(Instant.MAX) ? "null" : moment(stay.until());
    return "tstzrange(%s, %s, '[)')".formatted(moment(stay.from()), end);
  }

  private static String moment(Instant moment) {
    return "timestamptz '%s'".formatted(moment.atZone(Scenario.ZONE).toOffsetDateTime());
  }
}
