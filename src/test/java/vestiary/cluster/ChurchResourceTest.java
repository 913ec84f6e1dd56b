package vestiary.cluster;

import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.put;
import static vestiary.scenario.Sending.with;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class ChurchResourceTest {

  private static final Map<String, Object> MINIMAL =
      Map.of("slug", "st-anne", "name", "Saint Anne");

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void an_empty_cluster() {
    scenario.empty();
  }

  @Test
  void an_empty_cluster_has_no_church() {
    assertEquals(List.of(), Asking.list("/api/churches"));
  }

  @Test
  void a_short_name_and_a_name_are_enough() {
    post("/api/churches", MINIMAL)
        .then()
        .statusCode(201)
        .header("Location", endsWith("/api/churches/st-anne"))
        .body("slug", equalTo("st-anne"))
        .body("parish", equalTo("Saint Anne"))
        .body("setOutMinutes", equalTo(30))
        .body("clearanceMinutes", equalTo(15))
        .body("titular", nullValue());
    get("/api/churches/st-anne").then().statusCode(200).body("name", equalTo("Saint Anne"));
  }

  @Test
  void everything_that_is_given_is_kept() {
    Map<String, Object> whole =
        Map.ofEntries(
            Map.entry("slug", "st-anne"),
            Map.entry("name", "Saint Anne"),
            Map.entry("parish", "Millferry"),
            Map.entry("place", "Millferry"),
            Map.entry("title", "Saint Anne"),
            Map.entry("titular", "joachim-and-anne"),
            Map.entry("dedication", "1931-10-04"),
            Map.entry("setOutMinutes", 40),
            Map.entry("clearanceMinutes", 20),
            Map.entry("latitude", 41.5),
            Map.entry("longitude", -90.25));

    post("/api/churches", whole).then().statusCode(201);

    Map<String, Object> kept = get("/api/churches/st-anne").jsonPath().getMap("");
    whole.forEach(
        (field, value) -> assertEquals(value.toString(), kept.get(field).toString(), field));
  }

  @Test
  void churches_are_listed_in_the_order_in_which_they_were_entered() {
    List.of("st-paul", "st-anne", "holy-trinity").forEach(Sending::church);

    assertEquals(
        List.of("st-paul", "st-anne", "holy-trinity"),
        Asking.list("/api/churches").stream().map(c -> c.get("slug")).toList());
  }

  @Test
  void its_title_is_a_solemnity_in_its_own_church() {
    // UNLY 52 a and the table of liturgical days, 4 c: the title of one's own church.
    Sending.church("st-paul");
    post("/api/churches", with(MINIMAL, "titular", "joachim-and-anne")).then().statusCode(201);

    get("/api/churches/st-anne/days?from=2027-07-26&to=2027-07-26")
        .then()
        .body("[0].celebrations[0].rank", equalTo("solemnity"))
        .body("[0].celebrations[0].precedence", equalTo(4));
    get("/api/churches/st-paul/days?from=2027-07-26&to=2027-07-26")
        .then()
        .body("[0].celebrations[0].rank", equalTo("memorial"));
  }

  @Test
  void a_title_that_no_table_has_brings_its_own_day() {
    Map<String, Object> own =
        Map.of("name", "Our Lady of the Ford", "month", 10, "day", 19, "colour", "white");

    post("/api/churches", with(MINIMAL, "titular", own))
        .then()
        .statusCode(201)
        .body("titular", equalTo(own));

    get("/api/churches/st-anne/days?from=2026-10-19&to=2026-10-19")
        .then()
        .body("[0].celebrations[0].name", equalTo("Our Lady of the Ford"))
        .body("[0].celebrations[0].rank", equalTo("solemnity"));
  }

  @Test
  void a_title_on_leap_day_is_kept_every_year() {
    Map<String, Object> own =
        Map.of("name", "Our Lady of the Ford", "month", 2, "day", 29, "colour", "white");
    post("/api/churches", with(MINIMAL, "titular", own)).then().statusCode(201);

    get("/api/churches/st-anne/days?from=2027-02-01&to=2028-03-31")
        .then()
        .statusCode(200)
        .body("celebrations.flatten().name", hasItem("Our Lady of the Ford"));
  }

  @Test
  void the_anniversary_of_its_dedication_is_a_solemnity() {
    post("/api/churches", with(MINIMAL, "dedication", "1931-10-06")).then().statusCode(201);

    get("/api/churches/st-anne/days?from=2026-10-06&to=2026-10-06")
        .then()
        .body("[0].celebrations[0].rank", equalTo("solemnity"))
        .body("[0].celebrations[0].colours", equalTo(List.of("white")));
  }

  @Test
  void a_church_is_changed_and_renamed() {
    Sending.church("st-anne");

    put("/api/churches/st-anne", Map.of("slug", "anne", "name", "Anne", "setOutMinutes", 0))
        .then()
        .statusCode(200)
        .body("slug", equalTo("anne"))
        .body("setOutMinutes", equalTo(0));

    get("/api/churches/st-anne").then().statusCode(404);
    get("/api/churches/anne").then().statusCode(200).body("name", equalTo("Anne"));
  }

  @Test
  void two_churches_of_one_parish_share_it() {
    post("/api/churches", with(MINIMAL, "parish", "Wenlow")).then().statusCode(201);
    post("/api/churches", Map.of("slug", "st-paul", "name", "Paul", "parish", "Wenlow"))
        .then()
        .statusCode(201)
        .body("parish", equalTo("Wenlow"));
  }

  @Test
  void a_short_name_is_given_once() {
    Sending.church("st-anne");
    Sending.church("st-paul");

    refusing.refused(409, "taken", () -> post("/api/churches", MINIMAL));
    refusing.refused(409, "taken", () -> put("/api/churches/st-paul", MINIMAL));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"St-Anne", "st anne", "-anne", "anne-", "st--anne", "st_anne", "änne", "a/b", "."})
  void a_short_name_is_of_lower_case_letters_digits_and_single_hyphens(String slug) {
    refusing.unfit(() -> post("/api/churches", with(MINIMAL, "slug", slug)), "slug");
  }

  @Test
  void all_that_is_wrong_is_told_at_once() {
    refusing.unfit(() -> post("/api/churches", Map.of()), "slug", "name");
    refusing.unfit(
        () ->
            post(
                "/api/churches",
                Map.of(
                    "slug",
                    "a".repeat(41),
                    "name",
                    "n".repeat(201),
                    "titular",
                    "no-such-saint",
                    "dedication",
                    "1931-02-30",
                    "setOutMinutes",
                    -1,
                    "clearanceMinutes",
                    241,
                    "latitude",
                    91,
                    "longitude",
                    -181)),
        "slug",
        "name",
        "titular",
        "dedication",
        "setOutMinutes",
        "clearanceMinutes",
        "latitude",
        "longitude");
  }

  @Test
  void a_title_of_its_own_needs_a_name_a_day_and_a_known_colour() {
    refusing.unfit(
        () ->
            post(
                "/api/churches",
                with(MINIMAL, "titular", Map.of("month", 2, "day", 30, "colour", "blue"))),
        "titular.name",
        "titular",
        "titular.colour");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "third-sunday-of-advent",
        "ash-wednesday",
        "easter-octave-monday",
        "easter-vigil",
        "chrism-mass",
        "good-friday"
      })
  void no_church_is_named_for_a_sunday_or_a_weekday_of_the_seasons(String titular) {
    refusing.unfit(() -> post("/api/churches", with(MINIMAL, "titular", titular)), "titular");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "trinity-sunday",
        "corpus-christi-thursday",
        "christ-the-king",
        "nativity-of-the-lord"
      })
  void a_feast_that_moves_can_be_a_title(String titular) {
    post("/api/churches", with(MINIMAL, "titular", titular)).then().statusCode(201);

    get("/api/churches/st-anne/days?from=2026-01-01&to=2028-12-31").then().statusCode(200);
  }

  @Test
  void latitude_and_longitude_go_together() {
    refusing.unfit(() -> post("/api/churches", with(MINIMAL, "latitude", 41.5)), "longitude");
  }

  @Test
  void a_text_that_is_too_long_or_cannot_be_kept_is_refused() {
    refusing.unfit(() -> post("/api/churches", with(MINIMAL, "parish", "p".repeat(201))), "parish");
    refusing.unfit(() -> post("/api/churches", with(MINIMAL, "place", "p".repeat(2001))), "place");
    refusing.unfit(() -> post("/api/churches", with(MINIMAL, "place", "a\0b")), "place");
  }

  @Test
  void a_change_is_held_against_the_same_rules() {
    Sending.church("st-anne");

    refusing.unfit(() -> put("/api/churches/st-anne", Map.of("slug", "X")), "slug", "name");
  }

  @Test
  void an_unknown_church_is_not_there() {
    refusing.notThere(() -> get("/api/churches/nowhere"));
    refusing.notThere(() -> put("/api/churches/nowhere", MINIMAL));
    refusing.notThere(() -> get("/api/churches/nowhere/days?from=2026-12-08&to=2026-12-08"));
  }

  @Test
  void an_address_with_a_character_that_cannot_be_kept_is_refused() {
    refusing.refused(
        400,
        "unreadable-request",
        () -> RestAssured.given().urlEncodingEnabled(false).get("/api/churches/%00"));
  }
}
