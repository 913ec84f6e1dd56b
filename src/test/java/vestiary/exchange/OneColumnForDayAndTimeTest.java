package vestiary.exchange;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.contains;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Page;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class OneColumnForDayAndTimeTest {

  private static final String BOTH =
      "One column of your file holds the day and the time. Each is read from it.";

  @Inject Scenario scenario;

  @BeforeEach
  void two_churches() {
    scenario.empty();
    Sending.church("ht");
    Sending.church("sa");
  }

  @Test
  void the_page_shows_what_is_read_as_the_day_and_what_as_the_time() {
    byte[] file =
        Csv.file("Church,Date and time", "ht,24/12/2026 6:30 pm", "sa,25/12/2026 10:00 am");
    String address = Browsing.sendList("", file).wayOn();

    Page page =
        Browsing.page(address)
            .isHeaded("Import: Masses")
            .says("24/12/2026, 25/12/2026", "6:30 pm, 10:00 am", BOTH);
    assertEquals(List.of("1"), page.form(address).get("column-date"));
    assertEquals(List.of("1"), page.form(address).get("column-time"));
    Browsing.goOn(address, Map.of("dryRun", "true"))
        .says("Tried, nothing changed yet: two lines can be brought in.");
    Browsing.goOn(address, Map.of("dryRun", "false")).says("Two lines were brought in.");

    assertEquals(List.of("2026-12-24T18:30", "2026-12-25T10:00"), starts());
  }

  @Test
  void it_can_be_chosen_for_both_where_it_was_not_guessed() {
    byte[] file = Csv.file("church,date,time", "ht,24.12.2026 18:30,never");
    String address = Browsing.sendList("masses", file).wayOn();

    Browsing.page(address).keepsSilentOn(BOTH);
    Browsing.goOn(address, Map.of("dryRun", "false", "column-time", "1"))
        .says("One line was brought in.");

    assertEquals(List.of("2026-12-24T18:30"), starts());
  }

  @Test
  void what_is_wrong_in_such_a_cell_is_said_of_the_day_or_of_the_time() {
    byte[] file =
        Csv.file(
            "Iglesia;Fecha y hora;Minutos",
            "ht;24/12/2026 18:30;60",
            "sa;24/12/2026 20:00;60",
            "sa;25/12/2026 10:00;60",
            "ht;25/12/2026 11:30;60",
            "ht;31/02/2027 18:30;60",
            "ht;26/12/2026;60",
            "ht;27/12/2026 25:00;60");

    given()
        .header("Accept-Language", "en")
        .contentType("text/csv")
        .body(file)
        .post("/api/imports?what=masses&dryRun=true&columns=guess&days=day-month-year")
        .then()
        .body("bad.line", contains(6, 7, 8))
        .body("bad.column", contains("date", "time", "time"))
        .body(
            "bad.reason",
            contains(
                "\"31/02/2027 18:30\" cannot stand here. Write year-month-day, for example"
                    + " 2026-12-08, in the years 1970 to 2300.",
                "\"26/12/2026\" cannot stand here. Write hours and minutes from 00:00 to 23:59, for"
                    + " example 18:30.",
                "\"27/12/2026 25:00\" cannot stand here. Write hours and minutes from 00:00 to 23:59,"
                    + " for example 18:30."));
  }

  @Test
  void the_page_says_it_in_spanish() {
    scenario.load();
    String address =
        Browsing.sendList("masses", Csv.file("Iglesia;Fecha y hora", "ht;24/12/2026 18:30"))
            .wayOn();

    Page.of(given().header("Accept-Language", "es").accept("text/html").get(address).asString())
        .says(
            "Una columna de su archivo contiene el día y la hora. Se lee de ella lo uno y lo otro.");
  }

  private static List<String> starts() {
    return Asking.list("/api/masses?from=2026-12-24&to=2026-12-25").stream()
        .map(mass -> mass.get("start").toString().substring(0, 16))
        .toList();
  }
}
