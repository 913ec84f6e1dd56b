package vestiary.exchange;

import static io.restassured.RestAssured.given;
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

/** A list of churches that says in words what each is dedicated to. */
@QuarkusTest
class TitlesInWordsTest {

  private static final String HEADER = "Clave;Iglesia;Parroquia;Pueblo;Dirección;Titular";
  private static final String KNOWN = "alto;Ermita Alta;Arriba;Villa;Calle Mayor 1;Santa Ana";
  private static final String UNKNOWN = "bajo;Ermita Baja;Abajo;Villa;Calle Mayor 2;San Juan";

  @Inject Scenario scenario;

  @BeforeEach
  void nothing() {
    scenario.empty();
  }

  @Test
  void words_that_the_calendar_knows_are_read_as_the_title_and_as_its_day() {
    String address = Browsing.sendList("", Csv.file(HEADER, KNOWN)).wayOn();

    Browsing.page(address)
        .isHeaded("Import: Churches")
        .says("As the days of the titles these are read: Saints Joachim and Anne")
        .keepsSilentOn("for certain");
    Browsing.goOn(address, Map.of("dryRun", "false")).says("One line was brought in.");

    Map<String, Object> church = Asking.list("/api/churches").get(0);
    assertEquals("Santa Ana", church.get("title"));
    assertEquals("joachim-and-anne", church.get("titular"));
  }

  @Test
  void words_that_may_be_several_are_left_out_and_it_is_said_what_to_do() {
    String address = Browsing.sendList("", Csv.file(HEADER, KNOWN, UNKNOWN)).wayOn();

    Page page =
        Browsing.page(address)
            .says(
                "The calendar does not tell for certain which celebration is meant by San Juan;"
                    + " choose the day of each title on the page of its church, once the list is"
                    + " in.");
    assertEquals(List.of(""), page.form(address).get("column-titular"));
    Browsing.goOn(address, Map.of("dryRun", "false")).says("Two lines were brought in.");

    assertEquals(
        List.of("San Juan", "Santa Ana"),
        Asking.list("/api/churches").stream()
            .map(church -> church.get("title").toString())
            .sorted()
            .toList());
  }

  @Test
  void a_column_that_is_chosen_all_the_same_is_refused_where_it_is_not_understood() {
    String address = Browsing.sendList("", Csv.file(HEADER, KNOWN, UNKNOWN)).wayOn();

    Page page = Browsing.goOn(address, Map.of("dryRun", "true", "column-titular", "5"));

    page.says(
            "Tried, nothing changed yet: one line is not understood.",
            "\"San Juan\" cannot stand here. Write the id of a celebration that the calendar has,"
                + " for example trinity-sunday; or leave it empty, and choose the day of the title"
                + " on the page of the church.")
        .keepsSilentOn("\"Santa Ana\"");
  }

  @Test
  void the_page_says_it_in_spanish() {
    scenario.load();
    String address = Browsing.sendList("churches", Csv.file(HEADER, KNOWN)).wayOn();
    String other = Browsing.sendList("churches", Csv.file(HEADER, UNKNOWN)).wayOn();

    in_spanish(address)
        .says("Como días de los titulares se leen estos: Santos Joaquín y Ana, padres");
    in_spanish(other)
        .says("El calendario no dice con seguridad a qué celebración se refiere San Juan;");
  }

  private static Page in_spanish(String address) {
    return Page.of(
        given().header("Accept-Language", "es").accept("text/html").get(address).asString());
  }
}
