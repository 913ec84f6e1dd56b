package vestiary.ordo;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Browsing.open;
import static vestiary.scenario.Browsing.page;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.Page;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class YearPageTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void the_present_year_opens_with_its_cycles_its_neighbours_and_today() {
    page("/year")
        .isHeaded("The liturgical year 2027")
        .says("Sunday B, weekdays I", "29 November 2026 to 27 November 2027.", "United States")
        .links("/year/2026")
        .links("/year/2028")
        .links("#day-2026-11-30")
        .links("#december-2026")
        .links("/year/2027.ics")
        .links("/year/2027.csv");
  }

  @Test
  void another_year_offers_no_today() {
    assertFalse(page("/year/2028").html().contains("aria-current=\"date\""));
    page("/year/2028").keepsSilentOn("Today");
  }

  @Test
  void every_day_has_its_row_in_order() {
    String html = page("/year/2027").html();
    List<String> rows =
        Pattern.compile("<tr id=\"day-([0-9-]+)\"")
            .matcher(html)
            .results()
            .map(r -> r.group(1))
            .toList();

    assertEquals(
        LocalDate.of(2026, 11, 29)
            .datesUntil(LocalDate.of(2027, 11, 28))
            .map(LocalDate::toString)
            .toList(),
        rows);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-11-29 | 29 S violet First Sunday of Advent Advent, first week",
        "2026-12-04 | violet Advent weekday white or Optional memorial: Saint John Damascene",
        "2026-12-08 | Solemnity: The Immaculate Conception of the Blessed Virgin Mary Holy day of obligation",
        "2026-12-07 | white evening: Solemnity: The Immaculate Conception",
        "2026-12-13 | violet or rose Third Sunday of Advent (Gaudete) Advent, third week Rose may be worn.",
        "2026-12-06 | Left out: Saint Nicholas, Bishop.",
        "2027-02-17 | violet commemoration: Commemoration: The Seven Holy Founders",
        "2027-03-25 | Moved to 5 April: The Annunciation of the Lord.",
        "2027-03-25 | white and Evening Mass of the Lord's Supper",
        "2027-03-27 | white evening: Solemnity: The Easter Vigil in the Holy Night",
        "2027-04-05 | Solemnity: The Annunciation of the Lord Moved here from 25 March.",
        "2027-10-31 | The evening is still this day’s.",
        "2027-11-02 | violet or white or black",
        "2027-11-10 | white Saint Martin, Sandreach: evening: Solemnity: Saint Martin of Tours",
        "2027-11-11 | white Saint Martin, Sandreach: Solemnity: Saint Martin of Tours, Bishop",
        "2027-05-23 | Holy Trinity, Tollbridge: moved to 24 May: Anniversary of the Dedication"
      })
  void a_day_says_what_a_sacristan_looks_for(String date, String words) {
    String row = row(page("/year/2027"), date);

    assertTrue(row.contains(words), () -> "\"" + words + "\" not in: " + row);
  }

  @Test
  void an_ordinary_saturday_says_nothing_of_its_evening() {
    assertFalse(row(page("/year/2027"), "2026-12-05").contains("evening"));
  }

  @Test
  void sundays_and_holy_days_are_red_letter_days_and_other_solemnities_are_not() {
    String html = page("/year/2027").html();

    for (String date : List.of("2026-11-29", "2026-12-08", "2026-12-25")) {
      assertTrue(html.contains("id=\"day-" + date + "\" class=\"red-letter\""), date);
    }
    // The Annunciation does not oblige in the United States (decree of 13 December 1991).
    assertTrue(html.contains("id=\"day-2027-04-05\">"));
  }

  @Test
  void the_movable_days_the_holy_days_and_each_church_s_own_stand_before_the_months() {
    String front = front(page("/year/2027"));

    // Easter 2027 is 28 March by the tables of the Gregorian reform.
    for (String words :
        List.of(
            "Wednesday 10 February Ash Wednesday",
            "Sunday 28 March Solemnity: Easter Sunday",
            "Sunday 9 May Solemnity: The Ascension of the Lord",
            "Sunday 30 May Solemnity: The Most Holy Body and Blood of Christ",
            "Sunday 21 November Solemnity: Our Lord Jesus Christ, King of the Universe",
            "Tuesday 8 December Solemnity: The Immaculate Conception",
            "Rose may be worn on 13 December and 7 March",
            "Saint Anne, Millferry Monday 26 July Solemnity: Saints Joachim and Anne")) {
      assertTrue(front.contains(words), () -> "\"" + words + "\" not in: " + front);
    }
  }

  @Test
  void one_church_s_ordo_has_its_own_days_and_no_other_church_s() {
    Page booklet = page("/year/2027?church=sm&paper=a5");

    booklet
        .isHeaded("The liturgical year 2027")
        .says("Saint Martin, Sandreach", "Kept by this church alone")
        .links("/year/2027.ics?church=sm")
        .links("/year/2027.csv?church=sm")
        .links("/year/2028?church=sm&paper=a5")
        .links("/year/2027?paper=a5")
        .links("/year/2027?church=sm")
        .links("/css/ordo-a5.css");
    assertTrue(
        row(booklet, "2027-11-11")
            .contains("Solemnity: Saint Martin of Tours, Bishop Own day of this church."));
    assertFalse(row(booklet, "2027-10-20").contains("Dedication"));
  }

  @Test
  void names_that_are_not_of_the_page_s_language_are_marked() {
    Sending.put(
            "/api/settings",
            Map.of("name", "Valle", "calendar", "us", "languages", List.of("es", "en")))
        .then()
        .statusCode(200);
    String html = given().header("Accept-Language", "en").get("/year/2027").asString();

    assertTrue(html.contains("lang=\"es\">La Natividad del Señor</span>"));
    assertTrue(html.contains("lang=\"es\">Martes de la I semana de Adviento</span>"));
  }

  @Test
  void a_name_without_a_translation_stands_in_english_and_says_so() {
    Sending.put(
            "/api/settings", Map.of("name", "Vallis", "calendar", "us", "languages", List.of("la")))
        .then()
        .statusCode(200);
    String html = page("/year/2027").html();

    assertTrue(html.contains("lang=\"la\">In Nativitate Domini</span>"));
    assertTrue(html.contains("lang=\"en\">Saint Elizabeth Ann Seton, Religious</span>"));
  }

  @Test
  void a_cluster_without_a_church_has_its_year_all_the_same() {
    scenario.empty();
    Sending.put("/api/settings", Map.of("name", "Valley")).then().statusCode(200);

    page("/year/2027").keepsSilentOn("Kept by single churches", "All churches");
  }

  @ParameterizedTest
  @CsvSource({"1971, /year/1970, /year/1972", "2300, /year/2301, /year/2299"})
  void the_first_and_the_last_year_lead_no_farther(String year, String beyond, String within) {
    Page edge = page("/year/" + year).links(within);

    assertFalse(edge.html().contains("\"" + beyond + "\""));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"/year/1970", "/year/2301", "/year/99999", "/year/advent", "/year/%3Cb%3E"})
  void a_year_beyond_the_calendar_is_told_with_its_limits(String address) {
    open(address).is(404).says("the calendar holds those from 1971 to 2300").links("/year");
    refusing
        .refused(404, "not-there", () -> Sending.get(address))
        .body("detail", containsString("from 1971 to 2300"));
  }

  @Test
  void an_unknown_church_and_an_unknown_paper_are_refused() {
    open("/year/2027?church=nowhere").is(404).says("There is no church \"nowhere\".");
    open("/year/2027?paper=a3").is(400).says("paper \"a3\" is not known; it can be a4, a5.");
    refusing.notThere(() -> Sending.get("/year?church=nowhere"));
    refusing.unfit(() -> Sending.get("/year?paper=letter"), "paper");
  }

  private static String row(Page page, String date) {
    return words(page, "(?s)<tr id=\"day-" + date + "\".*?</tr>");
  }

  private static String front(Page page) {
    return words(page, "(?s)<div class=\"front\">.*?<nav class=\"turn months-nav\"");
  }

  private static String words(Page page, String part) {
    Matcher found = Pattern.compile(part).matcher(page.html());
    assertTrue(found.find(), part);
    return found
        .group()
        .replaceAll("(?s)<[^>]+>", " ")
        .replace("&#39;", "'")
        .replaceAll("[\\s\u00a0]+", " ")
        .replaceAll(" ([.:;,])", "$1");
  }
}
