package vestiary.proper;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.put;
import static vestiary.scenario.Sending.with;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
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

/** Entering, changing and removing what the churches keep beside the calendar of their country. */
@QuarkusTest
class ProperResourceTest {

  static final Map<String, Object> OUR_LADY =
      Map.of(
          "name", "Our Lady of the Ford",
          "month", 8,
          "day", 19,
          "colour", "white",
          "place", "patron-of-the-diocese");

  private static final Map<String, Object> ROMUALD =
      Map.of("celebration", "romuald", "place", "memorial");

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void two_churches_that_keep_the_general_calendar() {
    scenario.empty();
    Sending.church("ht");
    Sending.church("sm");
  }

  @Test
  void nothing_is_proper_at_first() {
    assertEquals(List.of(), Asking.list("/api/propers"));
  }

  @Test
  void a_day_that_the_calendar_does_not_have_is_kept_in_every_church() {
    enter(OUR_LADY)
        .header("Location", endsWith("/api/propers/our-lady-of-the-ford"))
        .body("id", equalTo("our-lady-of-the-ford"))
        .body("celebration", nullValue())
        .body("churches", nullValue())
        .body("colour", equalTo("white"));

    // UNLY 59 II.8 a: the principal patron of the diocese is kept there as a feast.
    for (String church : List.of("ht", "sm")) {
      kept(church, "2026-08-19")
          .body("[0].celebrations[0].name", equalTo("Our Lady of the Ford"))
          .body("[0].celebrations[0].rank", equalTo("feast"))
          .body("[0].celebrations[0].precedence", equalTo(8));
    }
  }

  @Test
  void everything_that_is_given_is_kept() {
    Map<String, Object> whole = new HashMap<>(OUR_LADY);
    whole.put("id", "our-lady");
    whole.put("latin", "Beatae Mariae Virginis de Vado");
    whole.put("spanish", "Nuestra Señora del Vado");
    whole.put("place", "patron-of-the-place");
    whole.put("churches", List.of("sm"));
    whole.put("onSunday", "nearest");

    enter(whole);

    assertEquals(whole, get("/api/propers/our-lady").jsonPath().getMap(""));
    get("/api/churches/sm/days?from=2026-08-16&to=2026-08-16&language=es")
        .then()
        .body("[0].celebrations[0].name", equalTo("Nuestra Señora del Vado"));
  }

  @Test
  void a_celebration_of_the_calendar_is_given_another_place() {
    enter(with(ROMUALD, "churches", List.of("sm")))
        .body("id", equalTo("romuald"))
        .body("churches", equalTo(List.of("sm")));

    kept("sm", "2026-06-19").body("[0].celebrations[0].rank", equalTo("memorial"));
    kept("ht", "2026-06-19").body("[0].celebrations[0].rank", equalTo("feria"));
  }

  @Test
  void a_celebration_of_the_calendar_is_given_another_date() {
    enter(with(with(ROMUALD, "month", 7), "day", 9));

    kept("ht", "2026-07-09").body("[0].celebrations[0].id", equalTo("romuald"));
    kept("ht", "2026-06-19").body("[0].celebrations.id", equalTo(List.of(weekday("2026-06-19"))));
  }

  @Test
  void one_church_may_be_sent_alone_and_binds_no_other() {
    enter(with(ROMUALD, "church", "sm")).body("churches", equalTo(List.of("sm")));
  }

  @Test
  void the_patron_of_a_town_binds_the_churches_of_the_town() {
    Sending.church("pp");
    enter(
        Map.of(
            "celebration",
            "romuald",
            "place",
            "patron-of-the-place",
            "churches",
            List.of("sm", "pp", "sm")));

    // UNLY 59 I.4 a: a solemnity.
    kept("sm", "2026-06-19").body("[0].celebrations[0].rank", equalTo("solemnity"));
    kept("pp", "2026-06-19").body("[0].celebrations[0].rank", equalTo("solemnity"));
    kept("ht", "2026-06-19").body("[0].celebrations[0].rank", equalTo("feria"));
    get("/api/propers/romuald").then().body("churches", equalTo(List.of("sm", "pp")));
  }

  @Test
  void the_dedication_of_a_church_is_taken_to_the_sunday() {
    // 6 October 2026 is a Tuesday, the Sunday before it the 4th, in Ordinary Time (UNLY 58).
    put(
            "/api/churches/sm",
            Map.of("slug", "sm", "name", "Saint Martin", "dedication", "1931-10-06"))
        .then()
        .statusCode(200);
    enter(
        Map.of(
            "celebration",
            "dedication-of-this-church",
            "onSunday",
            "before",
            "churches",
            List.of("sm")));

    kept("sm", "2026-10-04").body("[0].celebrations[0].id", equalTo("dedication-of-this-church"));
    kept("ht", "2026-10-04").body("[0].celebrations[0].rank", equalTo("sunday"));
  }

  @Test
  void a_bishop_sets_a_celebration_on_another_date_in_one_year() {
    enter(OUR_LADY);
    enter(Map.of("celebration", "our-lady-of-the-ford", "keptOn", "2027-08-20"))
        .body("id", equalTo("our-lady-of-the-ford-2027"));

    kept("ht", "2027-08-20").body("[0].celebrations[0].id", equalTo("our-lady-of-the-ford"));
    kept("ht", "2028-08-19").body("[0].celebrations[0].id", equalTo("our-lady-of-the-ford"));
  }

  @Test
  void a_decision_for_one_church_goes_before_that_for_all() {
    enter(OUR_LADY);
    enter(Map.of("celebration", "our-lady-of-the-ford", "keptOn", "2027-08-20"));
    enter(
            Map.of(
                "celebration",
                "our-lady-of-the-ford",
                "keptOn",
                "2027-08-26",
                "churches",
                List.of("sm")))
        .body("id", equalTo("our-lady-of-the-ford-2027-2"));

    kept("ht", "2027-08-20").body("[0].celebrations[0].id", equalTo("our-lady-of-the-ford"));
    kept("sm", "2027-08-26").body("[0].celebrations[0].id", equalTo("our-lady-of-the-ford"));
  }

  @Test
  void a_patron_of_one_town_may_be_a_memorial_of_the_whole_diocese() {
    enter(ROMUALD);
    enter(
        Map.of(
            "celebration", "romuald", "place", "patron-of-the-place", "churches", List.of("sm")));

    kept("ht", "2026-06-19").body("[0].celebrations[0].rank", equalTo("memorial"));
    kept("sm", "2026-06-19").body("[0].celebrations[0].rank", equalTo("solemnity"));
  }

  @Test
  void what_is_entered_is_changed_and_keeps_its_id() {
    enter(OUR_LADY);

    put(
            "/api/propers/our-lady-of-the-ford",
            with(with(OUR_LADY, "name", "Mary of the Ford"), "churches", List.of("sm")))
        .then()
        .statusCode(200)
        .body("id", equalTo("our-lady-of-the-ford"))
        .body("name", equalTo("Mary of the Ford"))
        .body("churches", equalTo(List.of("sm")));

    kept("ht", "2026-08-19").body("[0].celebrations[0].rank", equalTo("feria"));
    put("/api/propers/our-lady-of-the-ford", ROMUALD)
        .then()
        .statusCode(200)
        .body("celebration", equalTo("romuald"))
        .body("churches", nullValue())
        .body("name", nullValue());
    refusing.unfit(
        () -> put("/api/propers/our-lady-of-the-ford", with(ROMUALD, "id", "romuald")), "id");
  }

  @Test
  void what_is_removed_is_not_kept_any_more() {
    enter(with(OUR_LADY, "churches", List.of("sm")));

    delete("/api/propers/our-lady-of-the-ford").then().statusCode(204);

    refusing.notThere(() -> get("/api/propers/our-lady-of-the-ford"));
    kept("sm", "2026-08-19").body("[0].celebrations[0].rank", equalTo("feria"));
    enter(OUR_LADY);
  }

  @Test
  void a_church_may_bear_the_title_of_a_saint_of_its_diocese() {
    enter(OUR_LADY);

    put("/api/churches/sm", Map.of("slug", "sm", "name", "S", "titular", "our-lady-of-the-ford"))
        .then()
        .statusCode(200)
        .body("titular", equalTo("our-lady-of-the-ford"));

    kept("sm", "2026-08-19").body("[0].celebrations[0].rank", equalTo("solemnity"));
    kept("ht", "2026-08-19").body("[0].celebrations[0].rank", equalTo("feast"));
  }

  @Test
  void a_church_may_bear_the_title_of_a_patron_entered_for_it_alone() {
    enter(with(with(OUR_LADY, "place", "patron-of-the-place"), "churches", List.of("sm")));

    put("/api/churches/sm", Map.of("slug", "sm", "name", "S", "titular", "our-lady-of-the-ford"))
        .then()
        .statusCode(200);
    refusing.unfit(
        () ->
            put(
                "/api/churches/ht",
                Map.of("slug", "ht", "name", "T", "titular", "our-lady-of-the-ford")),
        "titular");
    put(
            "/api/propers/our-lady-of-the-ford",
            with(with(OUR_LADY, "place", "memorial"), "churches", List.of("sm")))
        .then()
        .statusCode(200);
  }

  @Test
  void the_title_of_a_church_stays_known_when_the_diocese_moves_it() {
    put("/api/churches/sm", Map.of("slug", "sm", "name", "S", "titular", "romuald"))
        .then()
        .statusCode(200);
    enter(with(with(ROMUALD, "month", 7), "day", 9));

    kept("sm", "2026-07-09").body("[0].celebrations[0].rank", equalTo("solemnity"));
  }

  @Test
  void what_is_not_there_is_told() {
    refusing.notThere(() -> get("/api/propers/nowhere"));
    refusing.notThere(() -> put("/api/propers/nowhere", OUR_LADY));
    refusing.notThere(() -> delete("/api/propers/nowhere"));
  }

  @Test
  void an_id_is_given_once() {
    enter(with(ROMUALD, "id", "day"));

    refusing
        .refused(409, "taken", () -> post("/api/propers", with(OUR_LADY, "id", "day")))
        .body("detail", containsString("entered already"));
    enter(OUR_LADY);
    refusing
        .refused(409, "taken", () -> post("/api/propers", with(OUR_LADY, "place", "memorial")))
        .body("detail", containsString("Our Lady of the Ford"));
  }

  static ValidatableResponse enter(Map<String, Object> body) {
    return post("/api/propers", body).then().statusCode(201);
  }

  static ValidatableResponse kept(String church, String date) {
    return get("/api/churches/%s/days?from=%s&to=%s".formatted(church, date, date))
        .then()
        .statusCode(200);
  }

  private static String weekday(String date) {
    return get("/api/calendars/general/days?from=%s&to=%s".formatted(date, date))
        .jsonPath()
        .getString("[0].celebrations[0].id");
  }
}
