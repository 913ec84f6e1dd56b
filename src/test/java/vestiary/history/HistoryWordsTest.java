package vestiary.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Page;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/** The history says what was kept as people say it, and not as the database writes it. */
@QuarkusTest
class HistoryWordsTest {

  @Inject Scenario scenario;
  @Inject LettingIn letting;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void who_brings_their_own_and_who_else_vests_are_counted_in_words() {
    String address = "/history/masses/" + changed();

    Browsing.page(address)
        .says(
            "who brings their own one celebrant (chasuble, stole) two concelebrants (chasuble, deacon’s stole)",
            "who else vests three servers (140, 150)",
            "which Mass Votive Mass")
        .keepsSilentOn("role", "count", "kinds", "sizes", "deacon-stole");
    inSpanish(address)
        .says(
            "dos concelebrantes (casulla, estola diaconal)",
            "tres monaguillos (140, 150)",
            "Misa votiva")
        .keepsSilentOn("concelebrant ", "chasuble", "votive");
  }

  @Test
  void the_title_of_a_church_is_named_and_not_given_by_its_id() {
    Map<String, Object> church = Sending.get("/api/churches/sa").jsonPath().getMap("");
    Sending.put("/api/churches/sa", Sending.with(church, "titular", "joseph-spouse-of-mary"))
        .then()
        .statusCode(200);

    Browsing.page("/history/churches/sa")
        .says("the title’s day Saints Joachim and Anne", "Saint Joseph, Spouse of the Blessed")
        .keepsSilentOn("joachim-and-anne", "joachim and anne", "joseph spouse of mary");
    inSpanish("/history/churches/sa").says("San José, esposo de la");
  }

  @Test
  void an_arrival_and_a_recurring_mass_are_told_in_words() {
    String mass =
        Sending.mass(
                Map.of("church", "ht", "start", "2026-12-10T15:00", "celebrant", "silas-umberley"))
            .get("id")
            .toString();
    Sending.put(
            "/api/people/silas-umberley/arrivals/" + mass,
            Map.of("arrives", "14:40", "brings", "own"))
        .then()
        .statusCode(204);

    Browsing.page("/history").says("brings vestments his own");
    inSpanish("/history").says("los suyos");
  }

  /** A Mass of the day that was made another, with people who come with vestments of their own. */
  private static Object changed() {
    Map<String, Object> mass = Asking.mass("sa", "2026-12-08T18:30");
    assertEquals("of-the-day", mass.get("mass"));
    Asking.change(
        mass,
        Map.of(
            "brings",
            List.of(
                Map.of(
                    "role",
                    "concelebrant",
                    "count",
                    2,
                    "kinds",
                    List.of("chasuble", "deacon-stole"))),
            "ministers",
            List.of(Map.of("kind", "server", "count", 3, "sizes", List.of("140", "150")))));
    Asking.change(
        Asking.mass("sa", "2026-12-08T18:30"),
        Map.of("mass", "votive", "votiveOf", "the Sacred Heart"));
    return mass.get("id");
  }

  private Page inSpanish(String address) {
    String token = letting.token(letting.user(Role.PASTOR));
    return Page.of(
        LettingIn.program(token)
            .accept("text/html")
            .header("Accept-Language", "es")
            .get(address)
            .asString());
  }
}
