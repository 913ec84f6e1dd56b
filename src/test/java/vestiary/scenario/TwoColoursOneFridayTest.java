package vestiary.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * On Friday 4 December 2026 one church keeps an optional memorial and another the weekday. Both do
 * right, so that it is shown and nobody is warned.
 *
 * <p>Source: Universal Norms on the Liturgical Year and the Calendar 14; General Instruction of the
 * Roman Missal 355.
 */
@QuarkusTest
class TwoColoursOneFridayTest {

  private static final String FRIDAY = "2026-12-04";

  @Inject Scenario scenario;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void the_memorial_is_white_here_and_the_weekday_violet_there() {
    Map<String, Object> memorial = Asking.mass("ol", FRIDAY + "T09:00");
    Map<String, Object> weekday = Asking.mass("ht", FRIDAY + "T12:10");

    assertEquals("white", memorial.get("colour"));
    assertEquals("violet", weekday.get("colour"));
    assertEquals(
        List.of("permitted", "permitted"),
        List.of(memorial.get("permission"), weekday.get("permission")));
  }

  @Test
  void nobody_is_warned() {
    assertEquals(List.of(), Asking.clashes(FRIDAY, FRIDAY));
    Browsing.page("/day/" + FRIDAY)
        .says("Saint John Damascene", "white", "violet", "Nothing stands in the way.");
    Browsing.page("/review/2026-11-30").says("Fri 4 09:00 Saint John Damascene, white");
  }
}
