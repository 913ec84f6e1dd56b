package vestiary.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.send;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.put;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Planning;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** Albs by the height of those who wear them, and how tall they are as a thing of their own. */
@QuarkusTest
class AlbsThatFitTest {

  private static final String START = "2026-12-09T10:00";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  private String mass;

  @BeforeEach
  void a_church_with_two_albs_and_a_tall_priest() {
    scenario.empty();
    put("/api/settings", Map.of("name", "Valley")).then().statusCode(200);
    Sending.church("ht");
    alb("ALB-1", "145", "ht");
    alb("ALB-2", "162", "ht");
    mass =
        Sending.mass(Map.of("church", "ht", "start", START, "celebrant", "Leander Wexcombe"))
            .get("id")
            .toString();
  }

  @Test
  void the_sheet_asks_how_tall_he_is_where_it_matters_and_then_no_more() {
    String address = "/masses/%s/height".formatted(mass);
    Map<String, List<String>> form =
        page(sheet())
            .says("How tall is Leander Wexcombe, in cm?")
            .form(address, Map.of("height", "196"));

    send(address, form).leadsTo(sheet());

    page(sheet())
        .says("about 163 cm, not over 167: in one too long he trips")
        .keepsSilentOn("How tall is");
    assertEquals(196, get("/api/people/leander-wexcombe/height").jsonPath().getInt("height"));
  }

  @Test
  void where_all_albs_are_of_one_length_nobody_is_asked() {
    delete("/api/pieces/ALB-2").then().statusCode(204);

    page(sheet()).keepsSilentOn("How tall is");
  }

  @Test
  void a_plan_gives_him_the_alb_that_fits() {
    height(196);
    assertEquals("ALB-2", plannedAlb());

    height(174);
    assertEquals("ALB-1", plannedAlb());
  }

  @Test
  void servers_get_albs_by_the_sizes_that_were_asked_for() {
    alb("ALB-S", "120", "ht");
    Asking.change(
        Asking.mass("ht", START),
        Map.of(
            "ministers", List.of(Map.of("kind", "server", "count", 1, "sizes", List.of("120")))));

    Map<String, Object> server =
        Planning.list(plan(), "assignments").stream()
            .filter(one -> one.get("kind").equals("alb") && one.get("role").equals("server"))
            .findFirst()
            .orElseThrow();
    assertEquals("ALB-S", server.get("piece"));
  }

  @Test
  void where_every_alb_would_trip_him_somebody_must_decide() {
    height(150);

    Map<String, Object> clash =
        Asking.only(
            Asking.clashes("2026-12-09", "2026-12-09").stream()
                .filter(c -> c.get("kind").equals("size"))
                .toList());

    assertEquals("decide", clash.get("severity"));
    Sending.church("sa");
    alb("SA-ALB", "125", "sa");
    page("/clashes?from=2026-12-09&to=2026-12-09")
        .says(
            "No alb that is here fits Leander Wexcombe",
            "In one too long he would trip. SA-ALB, 125 cm, at Church of sa would suit.",
            "Whoever has an alb of his own may bring it.");
  }

  @Test
  void where_every_alb_is_too_short_it_is_worth_knowing() {
    delete("/api/pieces/ALB-2").then().statusCode(204);
    height(196);

    assertEquals(
        List.of("know"),
        Asking.clashes("2026-12-09", "2026-12-09").stream()
            .filter(c -> c.get("kind").equals("size"))
            .map(c -> c.get("severity"))
            .toList());
  }

  @Test
  void a_height_is_kept_of_the_ordained_alone_and_goes_with_the_person() {
    refusing.unfit(
        () -> put("/api/people/leander-wexcombe/height", Map.of("height", 17)), "height");
    refusing.notThere(() -> put("/api/people/nobody/height", Map.of("height", 180)));
    height(196);
    page("/people/leander-wexcombe").says("Height in centimetres");
    page("/history/people/leander-wexcombe").says("Height of").keepsSilentOn("196");

    delete("/api/people/leander-wexcombe/height").then().statusCode(204);
    assertEquals(Map.of(), get("/api/people/leander-wexcombe/height").jsonPath().getMap(""));
  }

  private Map<String, Object> plan() {
    return Planning.finished(Planning.ask("2026-12-09", "2026-12-09"));
  }

  private String plannedAlb() {
    return Planning.list(plan(), "assignments").stream()
        .filter(one -> one.get("kind").equals("alb"))
        .map(one -> one.get("piece").toString())
        .findFirst()
        .orElseThrow();
  }

  private String sheet() {
    return "/masses/%s/set-out".formatted(mass);
  }

  private static void height(int centimetres) {
    put("/api/people/leander-wexcombe/height", Map.of("height", centimetres))
        .then()
        .statusCode(204);
  }

  private static void alb(String code, String size, String home) {
    Sending.piece(
        Map.of(
            "code", code, "kind", "alb", "colours", List.of("white"), "size", size, "home", home));
  }
}
