package vestiary.onemore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.press;
import static vestiary.scenario.Browsing.send;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Page;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** One more has come, five minutes before Mass: what is found for him, taken and given back. */
@QuarkusTest
class OneMoreTest {

  /** A Wednesday of Advent, in violet. */
  private static final String START = "2026-12-09T10:00";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  private String mass;

  @BeforeEach
  void a_church_with_two_violet_sets_and_a_white_one() {
    scenario.empty();
    Sending.put("/api/settings", Map.of("name", "Valley")).then().statusCode(200);
    Sending.church("ht");
    set("HT-V1", "violet");
    set("HT-V2", "violet");
    set("HT-W1", "white");
    mass = Sending.mass(Map.of("church", "ht", "start", START)).get("id").toString();
  }

  @Test
  void he_gets_a_set_of_the_colour_and_the_mass_one_concelebrant_more() {
    JsonPath added = added(Map.of("role", "concelebrant"));

    assertEquals(List.of("HT-V1-C", "HT-V1-S"), added.getList("pieces"));
    assertEquals(List.of(), added.getList("steps"));
    assertEquals(1, mass().get("concelebrants"));
    assertEquals(
        List.of("HT-V1-C", "held"),
        get("/api/masses/%s/set-out".formatted(mass))
            .jsonPath()
            .getList(
                "people.find { it.role == 'concelebrant' }.pile.find { it.kind == 'chasuble' }"
                    + ".collect { k, v -> v }.findAll { it == 'HT-V1-C' || it == 'held' }"));
  }

  @Test
  void the_ways_go_down_the_ladder_in_the_order_of_redemptionis_sacramentum() {
    // RS 124 and GIRM 209: stole over alb first by default, then a white chasuble of necessity.
    assertEquals(
        List.of("colour", "stole-over-alb", "white-chasuble", "own"), ways("concelebrant"));

    Map<String, Object> settings = get("/api/settings").jsonPath().getMap("");
    Map<String, Object> policies = new HashMap<>(Map.of("ladderOrder", "white"));
    Sending.put("/api/settings", Sending.with(settings, "policies", merged(settings, policies)))
        .then()
        .statusCode(200);

    assertEquals(
        List.of("colour", "white-chasuble", "stole-over-alb", "own"), ways("concelebrant"));
  }

  @Test
  void a_step_that_he_takes_is_accepted_by_name_so_that_no_clash_is_left() {
    JsonPath added = added(Map.of("role", "concelebrant", "way", "stole-over-alb"));

    assertEquals(List.of("HT-V1-S"), added.getList("pieces"));
    assertEquals(List.of("stole-over-alb"), added.getList("steps"));
    assertEquals(
        List.of("know"),
        Asking.clashes("2026-12-09", "2026-12-09").stream().map(c -> c.get("severity")).toList());
  }

  @Test
  void undo_leaves_every_row_as_it_was_but_for_the_history() {
    Map<String, Object> before = mass();
    String id = added(Map.of("role", "concelebrant", "way", "white-chasuble")).getString("id");

    delete("/api/masses/%s/one-more/%s".formatted(mass, id)).then().statusCode(204);
    delete("/api/masses/%s/one-more/%s".formatted(mass, id)).then().statusCode(204);

    assertEquals(before.get("concelebrants"), mass().get("concelebrants"));
    assertEquals(List.of(), Asking.clashes("2026-12-09", "2026-12-09"));
    assertEquals(
        List.of("colour", "stole-over-alb", "white-chasuble", "own"), ways("concelebrant"));
  }

  @Test
  void where_nothing_is_at_hand_the_page_says_what_the_norms_let_him_do() {
    added(Map.of());
    added(Map.of());

    assertEquals(List.of("own"), ways("concelebrant"));
    page(address())
        .says(
            "Nothing violet is free here.",
            "he may concelebrate in alb and stole (GIRM 209)",
            "He has brought his own");
    added(Map.of("way", "own"));
    assertEquals(3, mass().get("concelebrants"));
    page("/masses/%s/set-out".formatted(mass)).says("brings his own");
  }

  @Test
  void one_press_takes_what_the_page_showed_and_another_gives_it_back() {
    Page shown =
        page(address()).isHeaded("One more has come").says("In violet", "chasuble HT-V1-C");
    Page taken = send(address(), shown.form(address()));

    taken.leadsTo(address() + "?role=concelebrant");
    Page done = page(address()).says("One concelebrant more: HT-V1-C and HT-V1-S.", "Undo");
    press(done.action(address() + "/[^\"]*/undo")).leadsTo(address());

    page(address()).keepsSilentOn("One concelebrant more");
    assertEquals(0, mass().get("concelebrants"));
  }

  @Test
  void who_presses_second_for_the_same_set_is_told_and_nothing_of_his_is_kept() {
    Page seen = page(address());
    Map<String, List<String>> form = seen.form(address());
    send(address(), form).leadsTo(address() + "?role=concelebrant");

    Page second = refusing.unchanged(() -> send(address(), form));

    second.is(409).says("HT-V1-C", "was taken by somebody just now", "look what is still there");
  }

  @Test
  void of_many_at_once_each_gets_a_set_of_his_own_or_is_told() {
    List<CompletableFuture<Response>> asked = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      asked.add(
          CompletableFuture.supplyAsync(
              () -> post("/api/masses/%s/one-more".formatted(mass), Map.of("way", "colour"))));
    }
    List<Integer> answers =
        asked.stream().map(CompletableFuture::join).map(Response::statusCode).sorted().toList();

    assertEquals(List.of(201, 201, 409, 409), answers);
    assertEquals(2, mass().get("concelebrants"));
  }

  @Test
  void a_deacon_takes_a_dalmatic_or_by_leave_of_girm_338_the_stole_alone() {
    assertEquals(List.of("own"), ways("deacon"));
    Sending.piece("HT-DS1", "deacon-stole", "violet", "ht");
    assertEquals(List.of("dalmatic-left-out", "own"), ways("deacon"));
    Sending.piece("HT-D1", "dalmatic", "violet", "ht");
    assertEquals(List.of("colour", "dalmatic-left-out", "own"), ways("deacon"));

    assertEquals(List.of("HT-D1", "HT-DS1"), added(Map.of("role", "deacon")).getList("pieces"));
    assertEquals(1, mass().get("deacons"));
  }

  @Test
  void the_alb_is_one_in_which_he_does_not_trip_once_it_is_known_how_tall_he_is() {
    for (int length : List.of(130, 145, 160)) {
      Sending.piece(
          Map.of(
              "code",
              "ALB-" + length,
              "kind",
              "alb",
              "colours",
              List.of("white"),
              "size",
              String.valueOf(length),
              "home",
              "ht"));
    }
    page(address()).says("How tall is he, in cm?");

    assertEquals("ALB-160", alb(193));
    assertEquals("ALB-145", alb(175));
    assertEquals("ALB-130", alb(158));
  }

  @Test
  void what_cannot_be_is_refused_in_words_and_changes_nothing() {
    String over = Sending.mass(Map.of("church", "ht", "start", "2026-11-29T10:00")).get("id") + "";
    String benediction =
        Sending.mass(
                    Map.of(
                        "church",
                        "ht",
                        "start",
                        START.replace("10:", "17:"),
                        "mass",
                        "benediction"))
                .get("id")
            + "";

    refusing.refused(422, "against-rule", () -> take(over, Map.of()));
    refusing.refused(422, "against-rule", () -> take(benediction, Map.of()));
    refusing.unfit(() -> take(mass, Map.of("role", "bishop")), "role");
    refusing.unfit(() -> take(mass, Map.of("role", "server")), "role");
    refusing.unfit(() -> take(mass, Map.of("height", 20)), "height");
    refusing.refused(409, "taken", () -> take(mass, Map.of("way", "gold")));
  }

  private String alb(int height) {
    List<List<String>> pieces =
        get("/api/masses/%s/one-more?height=%d".formatted(mass, height))
            .jsonPath()
            .getList("ways.pieces");
    return pieces.get(0).stream().filter(code -> code.startsWith("ALB")).findFirst().orElse("");
  }

  private static Response take(String mass, Map<String, Object> body) {
    return post("/api/masses/%s/one-more".formatted(mass), body);
  }

  private JsonPath added(Map<String, Object> body) {
    return take(mass, body).then().statusCode(201).extract().jsonPath();
  }

  private List<String> ways(String role) {
    return get("/api/masses/%s/one-more?role=%s".formatted(mass, role))
        .then()
        .statusCode(200)
        .extract()
        .jsonPath()
        .getList("ways.way");
  }

  private String address() {
    return "/masses/%s/one-more".formatted(mass);
  }

  private Map<String, Object> mass() {
    return Asking.mass("ht", START);
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> merged(
      Map<String, Object> settings, Map<String, Object> more) {
    Map<String, Object> policies = new HashMap<>((Map<String, Object>) settings.get("policies"));
    policies.putAll(more);
    return policies;
  }

  private static void set(String code, String colour) {
    for (String kind : List.of("chasuble", "stole")) {
      Sending.piece(
          Map.of(
              "code",
              code + (kind.equals("stole") ? "-S" : "-C"),
              "kind",
              kind,
              "colours",
              List.of(colour),
              "set",
              code,
              "home",
              "ht"));
    }
  }
}
