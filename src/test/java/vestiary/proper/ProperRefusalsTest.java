package vestiary.proper;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static vestiary.proper.ProperResourceTest.OUR_LADY;
import static vestiary.proper.ProperResourceTest.enter;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.put;
import static vestiary.scenario.Sending.with;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** What cannot be entered among the days of one's own, and the sentence that says why. */
@QuarkusTest
class ProperRefusalsTest {

  private static final Map<String, Object> ANNE =
      Map.of("celebration", "joachim-and-anne", "place", "feast-of-the-diocese");

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void two_churches_one_of_them_of_saint_anne() {
    scenario.empty();
    post("/api/churches", Map.of("slug", "sa", "name", "Saint Anne", "titular", "joachim-and-anne"))
        .then()
        .statusCode(201);
    Sending.church("ht");
  }

  @Test
  void a_celebration_that_the_calendar_does_not_have() {
    refusing.unfit(() -> entering(with(ANNE, "celebration", "anne-of-nowhere")), "celebration");
    says(400, "the General Roman Calendar", with(ANNE, "celebration", "anne-of-nowhere"));
    put("/api/settings", Map.of("calendar", "ireland")).then().statusCode(200);
    says(400, "the calendar of Ireland", with(ANNE, "celebration", "anne-of-nowhere"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"easter-sunday", "third-sunday-of-advent", "ash-wednesday", "chrism-mass", "x y"})
  void a_day_of_the_season_and_what_is_no_celebration(String celebration) {
    refusing.unfit(() -> entering(with(ANNE, "celebration", celebration)), "celebration");
  }

  @ParameterizedTest
  @CsvSource({
    "2, 30, no day of the year",
    "2, 29, not in every year",
    "13, 1, no day of the year",
    "0, 1, no day of the year",
    "4, 31, no day of the year",
    "8, , no day of the year"
  })
  void a_date_that_not_every_year_has(Integer month, Integer day, String sentence) {
    Map<String, Object> body = with(with(OUR_LADY, "month", month), "day", day);

    refusing.unfit(() -> entering(body), "day");
    says(400, sentence, body);
    refusing.unfit(() -> entering(with(with(ANNE, "month", month), "day", day)), "day");
  }

  @ParameterizedTest
  @ValueSource(strings = {"gold", "silver", "Gold"})
  void gold_and_silver_which_no_day_has(String metal) {
    refusing.unfit(() -> entering(with(OUR_LADY, "colour", metal)), "colour");
    says(400, "vestment's colour", with(OUR_LADY, "colour", metal));
  }

  @Test
  void a_title_of_gold_which_would_keep_every_page_from_being_read() {
    Map<String, Object> title = Map.of("name", "T", "month", 5, "day", 4, "colour", "gold");

    refusing.unfit(
        () -> put("/api/churches/ht", Map.of("slug", "ht", "name", "T", "titular", title)),
        "titular.colour");
  }

  @ParameterizedTest
  @ValueSource(strings = {"name", "month", "day", "colour", "place"})
  void a_name_of_its_own_without_all_that_belongs_to_it(String missing) {
    Map<String, Object> body = new HashMap<>(OUR_LADY);
    body.remove(missing);
    String named = missing.equals("month") ? "day" : missing;

    if (missing.equals("name")) {
      refusing.unfit(() -> entering(body), "celebration", "colour");
    } else {
      refusing.unfit(() -> entering(body), named);
    }
  }

  @Test
  void a_request_that_says_nothing_or_two_things() {
    refusing.unfit(() -> entering(Map.of()), "celebration", "place");
    refusing.unfit(() -> entering(with(OUR_LADY, "celebration", "agnes")), "celebration");
    refusing.unfit(() -> entering(with(ANNE, "colour", "red")), "colour");
    refusing.unfit(
        () ->
            entering(
                Map.of(
                    "id",
                    "No Id",
                    "celebration",
                    "a".repeat(61),
                    "latin",
                    "l".repeat(201),
                    "month",
                    2,
                    "day",
                    30,
                    "colour",
                    "blue",
                    "place",
                    "bishop",
                    "onSunday",
                    "monday",
                    "churches",
                    List.of("nowhere"))),
        "id",
        "celebration",
        "latin",
        "day",
        "colour",
        "place",
        "onSunday",
        "churches");
    refusing.unfit(() -> entering(with(ANNE, "id", "new")), "id");
    refusing.unfit(() -> post("/api/propers", "null"), "body");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1969-12-31", "2301-01-01", "2027-02-30", "soon"})
  void a_date_of_one_year_beyond_the_calendar(String date) {
    refusing.unfit(
        () -> entering(Map.of("celebration", "joachim-and-anne", "keptOn", date)), "keptOn");
  }

  @Test
  void a_date_of_one_year_that_says_something_else_too() {
    refusing.unfit(
        () -> entering(with(with(ANNE, "keptOn", "2027-07-27"), "onSunday", "after")),
        "place",
        "onSunday");
    refusing.unfit(() -> entering(Map.of("keptOn", "2027-07-27")), "celebration");
  }

  @Test
  void the_same_celebration_twice_for_the_same_churches() {
    enter(ANNE);
    enter(Map.of("celebration", "romuald", "place", "memorial", "churches", List.of("ht", "sa")));
    enter(Map.of("celebration", "romuald", "keptOn", "2027-06-21"));

    says(409, "entered already for all churches", with(ANNE, "place", "memorial"));
    says(
        409,
        "entered already for one of these churches",
        Map.of("celebration", "romuald", "place", "memorial", "churches", List.of("ht")));
    says(409, "entered already", Map.of("celebration", "romuald", "keptOn", "2027-06-22"));
    enter(Map.of("celebration", "romuald", "keptOn", "2028-06-22"));
  }

  @Test
  void a_second_principal_patron_of_the_diocese() {
    enter(OUR_LADY);

    says(
        409,
        "Our Lady of the Ford is the principal patron of the diocese already",
        with(ANNE, "place", "patron-of-the-diocese"));
    says(
        409,
        "patron of the diocese already",
        with(with(ANNE, "place", "patron-of-the-diocese"), "churches", List.of("ht")));
    enter(with(ANNE, "place", "secondary-patron"));
  }

  @Test
  void a_second_patron_of_the_same_place() {
    enter(with(with(OUR_LADY, "place", "patron-of-the-place"), "churches", List.of("ht")));

    says(
        409,
        "patron of the place already",
        with(with(ANNE, "place", "patron-of-the-place"), "churches", List.of("sa", "ht")));
    enter(with(with(ANNE, "place", "patron-of-the-place"), "churches", List.of("sa")));
  }

  @Test
  void a_second_dedication_of_the_cathedral() {
    enter(with(OUR_LADY, "place", "dedication-of-the-cathedral"));

    says(
        409,
        "one cathedral",
        with(
            with(OUR_LADY, "name", "The Dedication of the Cathedral"),
            "place",
            "dedication-of-the-cathedral"));
  }

  @Test
  void a_name_under_an_id_that_the_calendar_has() {
    says(422, "choose it there", with(with(OUR_LADY, "name", "Agnes"), "month", 1));
    says(422, "choose it there", with(OUR_LADY, "id", "agnes"));
    says(422, "choose it there", with(OUR_LADY, "name", "Titular of this church"));
  }

  @Test
  void the_title_of_a_church_which_is_a_solemnity_already() {
    says(422, "is the title of Saint Anne", with(ANNE, "churches", List.of("sa")));
    // Patron of the town and title of its church: the former stands higher (UNLY 59 I.4 a and c).
    enter(with(with(ANNE, "place", "patron-of-the-place"), "churches", List.of("sa")));
  }

  @Test
  void the_title_of_a_church_that_has_a_day_of_its_own() {
    Map<String, Object> title =
        Map.of("name", "Our Lady of the Ford", "month", 8, "day", 19, "colour", "white");
    put("/api/churches/ht", Map.of("slug", "ht", "name", "Ford", "titular", title))
        .then()
        .statusCode(200);

    says(422, "is the title of Ford with a day of its own", OUR_LADY);
    enter(with(OUR_LADY, "churches", List.of("sa")));
    refusing.unfit(
        () -> put("/api/churches/sa", Map.of("slug", "sa", "name", "A", "titular", title)),
        "titular.name");
  }

  @Test
  void a_feast_of_one_church_that_names_none() {
    says(422, "names its church", with(ANNE, "place", "feast-of-one-church"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "dedication-of-the-cathedral",
        "secondary-patron",
        "patron-of-the-diocese",
        "feast-of-the-diocese",
        "memorial"
      })
  void what_does_not_stand_above_a_sunday_is_not_taken_to_it(String place) {
    says(422, "(UNLY 58)", with(with(OUR_LADY, "place", place), "onSunday", "nearest"));
    enter(with(with(OUR_LADY, "place", "patron-of-the-place"), "onSunday", "nearest"));
  }

  @Test
  void a_title_is_taken_to_sunday_in_its_own_church_alone() {
    Map<String, Object> wish = Map.of("celebration", "joachim-and-anne", "onSunday", "after");

    says(422, "(UNLY 58)", wish);
    says(422, "(UNLY 58)", with(wish, "churches", List.of("sa", "ht")));
    enter(with(wish, "churches", List.of("sa")));
  }

  @Test
  void a_dedication_of_a_church_whose_dedication_is_not_known() {
    Map<String, Object> wish =
        Map.of("celebration", "dedication-of-this-church", "onSunday", "after");

    says(400, "name the churches", wish);
    says(400, "enter it with that church first", with(wish, "churches", List.of("ht")));
    says(
        400,
        "name the churches",
        Map.of(
            "celebration",
            "titular-of-this-church",
            "place",
            "memorial",
            "churches",
            List.of("sa")));
  }

  @Test
  void a_celebration_that_was_entered_for_other_churches() {
    enter(with(with(OUR_LADY, "place", "memorial"), "churches", List.of("sa")));

    says(
        400,
        "not for Church of ht",
        Map.of(
            "celebration",
            "our-lady-of-the-ford",
            "place",
            "feast-of-one-church",
            "churches",
            List.of("ht")));
  }

  @Test
  void the_removal_of_what_a_title_or_another_day_is_about() {
    enter(OUR_LADY);
    put("/api/churches/ht", Map.of("slug", "ht", "name", "Ford", "titular", "our-lady-of-the-ford"))
        .then()
        .statusCode(200);

    refusing
        .refused(409, "taken", () -> delete("/api/propers/our-lady-of-the-ford"))
        .body("detail", containsString("is the title of Ford"));
    refusing
        .refused(
            409,
            "taken",
            () ->
                put("/api/propers/our-lady-of-the-ford", with(OUR_LADY, "churches", List.of("sa"))))
        .body("detail", containsString("is the title of Ford"));
    put("/api/churches/ht", Map.of("slug", "ht", "name", "Ford")).then().statusCode(200);
    enter(Map.of("celebration", "our-lady-of-the-ford", "keptOn", "2027-08-20"));
    refusing
        .refused(409, "taken", () -> delete("/api/propers/our-lady-of-the-ford"))
        .body("detail", containsString("our-lady-of-the-ford-2027"));
  }

  @Test
  void a_calendar_chosen_anew_that_lacks_what_is_entered() {
    put("/api/settings", Map.of("calendar", "us")).then().statusCode(200);
    enter(Map.of("celebration", "elizabeth-ann-seton", "place", "feast-of-the-diocese"));

    refusing
        .refused(400, "unfit-field", () -> put("/api/settings", Map.of("calendar", "ireland")))
        .body("detail", containsString("one of the days of your own"));
  }

  @Test
  void a_calendar_chosen_anew_that_has_what_was_entered_by_name() {
    enter(with(OUR_LADY, "name", "Elizabeth Ann Seton"));

    refusing
        .refused(400, "unfit-field", () -> put("/api/settings", Map.of("calendar", "us")))
        .body("detail", containsString("itself"));
    get("/api/settings").then().body("calendar", equalTo("general"));
  }

  private void says(int status, String sentence, Map<String, Object> body) {
    String name =
        switch (status) {
          case 400 -> "unfit-field";
          case 409 -> "taken";
          default -> "against-rule";
        };
    Supplier<Response> request = () -> entering(body);
    refusing.refused(status, name, request).body("detail", containsString(sentence));
  }

  private static Response entering(Map<String, Object> body) {
    return post("/api/propers", body);
  }
}
