package vestiary.cluster;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Sending.get;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;

@QuarkusTest
class CalendarResourceTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void an_empty_cluster() {
    scenario.empty();
  }

  @Test
  void the_general_calendar_and_the_national_ones_are_offered() {
    get("/api/calendars")
        .then()
        .statusCode(200)
        .contentType("application/json")
        .body("id", hasItems("general", "us"))
        .body("find { it.id == 'us' }.epiphany", equalTo("sunday"))
        .body("find { it.id == 'general' }.epiphany", equalTo("date"));
  }

  @Test
  void a_day_says_season_cycles_celebrations_and_evening() {
    // UNLY 39: Advent begins with the Sunday that falls on or nearest to 30 November.
    get("/api/calendars/general/days?from=2026-11-29&to=2026-11-29")
        .then()
        .statusCode(200)
        .body("", hasSize(1))
        .body("[0].date", equalTo("2026-11-29"))
        .body("[0].season", equalTo("advent"))
        .body("[0].week", equalTo(1))
        .body("[0].sundayCycle", equalTo("B"))
        .body("[0].weekdayCycle", equalTo("I"))
        .body("[0].obligation", equalTo(true))
        .body("[0].celebrations[0].id", equalTo("first-sunday-of-advent"))
        .body("[0].celebrations[0].rank", equalTo("sunday"))
        .body("[0].celebrations[0].precedence", equalTo(2))
        .body("[0].celebrations[0].colours", equalTo(List.of("violet")))
        .body("[0].evening.belongsTo", equalTo("today"));
  }

  @Test
  void both_ends_of_a_span_are_answered_in_order() {
    assertEquals(
        List.of("2028-02-28", "2028-02-29", "2028-03-01"),
        get("/api/calendars/general/days?from=2028-02-28&to=2028-03-01")
            .jsonPath()
            .getList("date"));
  }

  @ParameterizedTest
  @CsvSource({
    // UNLY 7: 6 January, 40th and 60th day of Easter, unless they are kept on the Sunday.
    "epiphany=date, 2027-01-06, The Epiphany of the Lord",
    "epiphany=sunday, 2027-01-03, The Epiphany of the Lord",
    "ascension=thursday, 2027-05-06, The Ascension of the Lord",
    "ascension=sunday, 2027-05-09, The Ascension of the Lord",
    "corpusChristi=thursday, 2027-05-27, The Most Holy Body and Blood of Christ",
    "corpusChristi=sunday, 2027-05-30, The Most Holy Body and Blood of Christ"
  })
  void three_solemnities_move_as_they_are_told(String option, String date, String celebration) {
    for (String calendar : List.of("general", "us")) {
      get("/api/calendars/%s/days?from=%s&to=%s&%s".formatted(calendar, date, date, option))
          .then()
          .statusCode(200)
          .body("[0].celebrations[0].name", equalTo(celebration));
    }
  }

  @Test
  void a_transferred_solemnity_says_why() {
    // UNLY 60: a solemnity that a privileged day impedes goes to the next free day; in 2029 the
    // Annunciation, 25 March, is Palm Sunday, and goes to the Monday after the Easter octave.
    get("/api/calendars/general/days?from=2029-03-25&to=2029-03-25")
        .then()
        .body("[0].omitted.id", hasItem("annunciation"));
    get("/api/calendars/general/days?from=2029-04-09&to=2029-04-09")
        .then()
        .body("[0].celebrations[0].id", equalTo("annunciation"));
  }

  @Test
  void a_day_gives_the_rules_that_decided_it_one_after_another() {
    // UNLY 5, 59, 60; GIRM 346 d; canon 1246.
    get("/api/calendars/us/days?from=2024-12-08&to=2024-12-08")
        .then()
        .statusCode(200)
        .body("[0].psalterWeek", equalTo(2))
        .body("[0].byPresentNorms", equalTo(false))
        .body("[0].omitted[0].keptOn", equalTo("2024-12-09"))
        .body(
            "[0].reasons.source",
            equalTo(
                List.of(
                    "UNLY 39 to 42",
                    "UNLY 59 I.2",
                    "UNLY 5, 60",
                    "GIRM 346 d",
                    "Canon 1246 § 1",
                    "UNLY 61; UNLY 59 I.3")))
        .body("[0].reasons[2].sentence", containsString("kept on Monday 9 December 2024"));
  }

  @Test
  void a_year_before_2008_says_where_the_norm_was_another() {
    // Decree of 22 April 1990, Notitiae 26, 160.
    get("/api/calendars/general/days?from=1985-12-08&to=1985-12-08")
        .then()
        .body("[0].byPresentNorms", equalTo(true))
        .body("[0].reasons.sentence", hasItem(containsString("by present norms")));
  }

  @Test
  void england_in_2015_has_the_options_of_that_year_unless_others_are_asked_for() {
    // Liturgy Office of England and Wales, 'Summary of dates 2015'; notice of 11 September 2017.
    get("/api/calendars/england/days?from=2015-01-04&to=2015-01-06")
        .then()
        .body("[0].celebrations[0].id", equalTo("epiphany-sunday"))
        .body("[2].celebrations[0].id", equalTo("january-6"));
    get("/api/calendars/england/days?from=2015-01-06&to=2015-01-06&epiphany=date")
        .then()
        .body("[0].celebrations[0].id", equalTo("epiphany"));
    get("/api/calendars/england/days?from=2026-01-06&to=2026-01-06")
        .then()
        .body("[0].celebrations[0].id", equalTo("epiphany"));
  }

  @Test
  void names_come_in_the_language_that_is_asked_for() {
    get("/api/calendars/general/days?from=2026-12-25&to=2026-12-25&language=la")
        .then()
        .statusCode(200)
        .body("[0].celebrations[0].name", equalTo("In Nativitate Domini"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1970-01-01", "2300-12-31"})
  void the_first_and_the_last_day_are_known(String date) {
    get("/api/calendars/general/days?from=%s&to=%s".formatted(date, date))
        .then()
        .statusCode(200)
        .body("", hasSize(1));
  }

  @Test
  void ten_years_may_be_asked_for_at_once() {
    assertEquals(
        3_653, Asking.list("/api/calendars/us/days?from=2020-01-01&to=2030-01-01").size() - 1);
  }

  @ParameterizedTest
  @CsvSource({
    "from=1969-12-31&to=1970-01-01, from",
    "from=2300-12-31&to=2301-01-01, from",
    "from=2026-12-02&to=2026-12-01, to",
    "from=2020-01-01&to=2031-01-01, to",
    "from=2026-02-29&to=2026-03-01, from",
    "from=8.12.2026&to=2026-12-08, from",
    "from=2026-12-08T18:30&to=2026-12-08, from",
    "from=2026-12-08, to",
    "to=2026-12-08, from",
    "from=%2B999999999-12-01&to=2026-12-08, from",
    "from=2026-12-08&to=%2B999999999-12-31, to",
    "from=-999999999-01-01&to=2026-12-08, from",
    "from=2026-12-08&to=2026-12-08&epiphany=monday, epiphany",
    "from=2026-12-08&to=2026-12-08&ascension=date, ascension",
    "from=2026-12-08&to=2026-12-08&corpusChristi=x, corpusChristi"
  })
  void a_span_that_cannot_be_answered_is_refused_at_its_field(String query, String field) {
    refusing.unfit(() -> given(query), field);
  }

  @Test
  void without_any_dates_both_are_asked_for() {
    refusing.unfit(() -> get("/api/calendars/general/days"), "from", "to");
  }

  @Test
  void an_unknown_calendar_is_not_there() {
    refusing.notThere(() -> get("/api/calendars/mars/days?from=2026-12-08&to=2026-12-08"));
    refusing.notThere(() -> get("/api/calendars/%00/days?from=2026-12-08&to=2026-12-08"));
  }

  private static Response given(String query) {
    return RestAssured.given()
        .urlEncodingEnabled(false)
        .get("/api/calendars/general/days?" + query);
  }
}
