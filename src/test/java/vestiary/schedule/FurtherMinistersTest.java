package vestiary.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.put;
import static vestiary.scenario.Sending.with;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** Who vests besides celebrants and deacons, as programs enter it. */
@QuarkusTest
class FurtherMinistersTest {

  private static final String DAY = "2026-12-09";
  private static final Map<String, Object> MINIMAL =
      Map.of("church", "ht", "start", DAY + "T15:00");

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void a_mass_half_said_has_no_bishop_and_nobody_further() {
    Map<String, Object> mass = Sending.mass(MINIMAL);

    assertEquals(false, mass.get("bishop"));
    assertEquals(List.of(), mass.get("ministers"));
    assertEquals(List.of(), mass.get("also"));
  }

  @Test
  void all_that_is_given_is_kept() {
    Map<String, Object> given =
        Map.of(
            "bishop",
            true,
            "ministers",
            List.of(
                Map.of("kind", "server", "count", 3, "sizes", List.of("120", "130")),
                Map.of("kind", "reader", "count", 1, "sizes", List.of())),
            "also",
            List.of("cope", "humeral-veil"));

    Map<String, Object> mass = Sending.mass(both(MINIMAL, given));

    Map<String, Object> kept = get("/api/masses/" + mass.get("id")).jsonPath().getMap("");
    given.forEach((field, value) -> assertEquals(value, kept.get(field), field));
    assertEquals(List.of("bishop"), kept.get("chosen"));
    put("/api/masses/" + mass.get("id"), kept).then().statusCode(200);
    assertEquals(kept, get("/api/masses/" + mass.get("id")).jsonPath().getMap(""));
  }

  @Test
  void a_number_that_is_not_said_is_that_of_the_sizes_and_none_are_left_out() {
    Map<String, Object> mass =
        Sending.mass(
            with(
                MINIMAL,
                "ministers",
                List.of(
                    Map.of("kind", "server", "sizes", List.of("120", "130")),
                    Map.of("kind", "acolyte"),
                    Map.of("kind", "reader", "count", 0))));

    assertEquals(
        List.of(
            Map.of("kind", "server", "count", 2, "sizes", List.of("120", "130")),
            Map.of("kind", "acolyte", "count", 1, "sizes", List.of())),
        mass.get("ministers"));
  }

  @Test
  void a_bishop_who_is_named_presides_without_its_being_said_and_not_after_he_is_gone() {
    Map<String, Object> mass = Sending.mass(with(MINIMAL, "celebrant", "aldous-fenwarden"));

    assertEquals(true, mass.get("bishop"));
    assertEquals(List.of(), mass.get("chosen"));

    Asking.change(mass, Map.of("celebrant", "cosmas-ilverton"));

    assertEquals(false, Asking.mass("ht", DAY + "T15:00").get("bishop"));
  }

  @Test
  void a_bishops_mass_is_laid_out_for_earlier() {
    Map<String, Object> mass =
        Sending.mass(both(MINIMAL, Map.of("bishop", true, "concelebrants", 30)));

    Map<String, Object> clash =
        Asking.clashes(DAY, DAY).stream()
            .filter(c -> ((List<?>) c.get("masses")).contains(mass.get("id")))
            .findFirst()
            .orElseThrow();
    assertEquals(DAY + "T14:00:00-06:00", clash.get("from"));
  }

  @Test
  void what_nobody_understands_is_told_field_by_field() {
    refusing.unfit(
        () ->
            post(
                "/api/masses",
                both(
                    MINIMAL,
                    Map.of(
                        "ministers",
                        List.of(
                            Map.of("kind", "principal"),
                            Map.of("kind", "server", "count", 201),
                            Map.of("kind", "reader", "count", 1, "sizes", List.of("1", "2"))),
                        "also",
                        List.of("chasuble")))),
        "ministers.kind",
        "ministers.server",
        "ministers.sizes",
        "also");
  }

  @Test
  void the_servers_of_a_pattern_serve_at_each_of_its_masses() {
    List<Object> servers = List.of(Map.of("kind", "server", "count", 4, "sizes", List.of("120")));
    post(
            "/api/patterns",
            Map.of(
                "church", "sm",
                "rrule", "FREQ=WEEKLY;BYDAY=WE",
                "starts", DAY,
                "time", "19:00",
                "ministers", servers))
        .then()
        .statusCode(201);

    assertEquals(servers, Asking.mass("sm", DAY + "T19:00").get("ministers"));
    assertEquals(servers, Asking.mass("sm", "2026-12-16T19:00").get("ministers"));
  }

  private static Map<String, Object> both(Map<String, Object> one, Map<String, Object> other) {
    Map<String, Object> both = new HashMap<>(one);
    both.putAll(other);
    return both;
  }
}
