package vestiary.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Three Masses at Holy Trinity on Saturday 12 December 2026: the feast's, a wedding, and the
 * evening's of Gaudete. Colour follows the Mass, not the date.
 *
 * <p>Source: the invented scenario; common practice, no source.
 */
@QuarkusTest
class TwoColoursOneSaturdayTest {

  private static final String SATURDAY = "2026-12-12";

  @Inject Scenario scenario;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void one_date_sees_white_white_and_rose() {
    List<Map<String, Object>> masses = Asking.masses("ht", SATURDAY);

    assertEquals(
        List.of("white", "white", "rose"), masses.stream().map(m -> m.get("colour")).toList());
    assertEquals(
        List.of("of-the-day", "wedding", "anticipated"),
        masses.stream().map(m -> m.get("mass")).toList());
  }

  @Test
  void the_morning_keeps_the_feast() {
    Map<String, Object> morning = Asking.mass("ht", SATURDAY + "T08:30");

    assertEquals("our-lady-of-guadalupe", morning.get("celebration"));
    assertEquals(List.of("white"), morning.get("colours"));
  }

  @Test
  void the_evening_may_be_violet_or_rose() {
    Map<String, Object> evening = Asking.mass("ht", SATURDAY + "T17:00");

    assertEquals("third-sunday-of-advent", evening.get("celebration"));
    assertEquals(List.of("violet", "rose"), evening.get("colours"));
    assertEquals(List.of("colour", "mass"), sorted(evening.get("chosen")));
  }

  @Test
  void white_is_enough_for_all() {
    assertEquals(List.of(), Asking.clashes(SATURDAY, SATURDAY));
  }

  private static List<?> sorted(Object names) {
    return ((List<?>) names).stream().sorted().toList();
  }
}
