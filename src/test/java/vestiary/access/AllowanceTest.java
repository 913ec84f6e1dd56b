package vestiary.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.bucket4j.TimeMeter;
import java.time.Duration;
import org.junit.jupiter.api.Test;

class AllowanceTest {

  private long now;

  private final Allowance sixty =
      new Allowance(
          60,
          new TimeMeter() {
            @Override
            public long currentTimeNanos() {
              return now;
            }

            @Override
            public boolean isWallClockBased() {
              return false;
            }
          });

  @Test
  void a_minutes_worth_is_there_at_once_and_the_next_comes_in_after_a_second() {
    take("piers", 60);

    assertEquals(Duration.ofSeconds(1), sixty.findPause("piers").orElseThrow());
    now += Duration.ofSeconds(1).toNanos();
    assertTrue(sixty.findPause("piers").isEmpty());
    assertTrue(sixty.findPause("piers").isPresent());
  }

  @Test
  void what_one_asks_is_taken_from_nobody_else() {
    take("piers", 61);

    assertTrue(sixty.findPause("nell").isEmpty());
  }

  @Test
  void whoever_has_not_asked_for_longest_is_forgotten_and_memory_stays_bounded() {
    take("piers", 61);
    for (int i = 0; i < 20_000; i++) {
      sixty.findPause("address " + i);
    }

    assertTrue(sixty.findPause("piers").isEmpty());
  }

  @Test
  void addresses_of_one_network_are_one() {
    assertEquals(
        Allowances.network("2001:db8:1:2::1"), Allowances.network("2001:db8:1:2:ffff:0:0:9"));
    assertTrue(
        !Allowances.network("2001:db8:1:2::1").equals(Allowances.network("2001:db8:1:3::1")));
    assertEquals("192.0.2.7", Allowances.network("192.0.2.7"));
    assertEquals("unknown", Allowances.network("unknown"));
  }

  private void take(String who, int times) {
    for (int i = 0; i < times; i++) {
      sixty.findPause(who);
    }
  }
}
