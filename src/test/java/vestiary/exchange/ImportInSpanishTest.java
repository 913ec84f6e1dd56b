package vestiary.exchange;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.startsWith;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Page;
import vestiary.scenario.Scenario;

/** What is wrong with a list is said in the language of whoever has it tried, by a job too. */
@QuarkusTest
class ImportInSpanishTest {

  private static final String BAD =
      "church,date,time,minutes,celebrant\nht,2026-13-01,18:30,4,\nht,2026-12-01,18:30,45,nobody-known\n";

  @Inject Scenario scenario;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void a_program_is_told_of_single_lines_in_the_language_that_it_asks_for() {
    send("es", "what=masses&dryRun=true", BAD)
        .body(
            "bad.reason",
            contains(
                "Aquí no puede ir \"2026-13-01\". Escriba año-mes-día, por ejemplo 2026-12-08, entre los años 1970 y 2300.",
                "Aquí no puede ir \"4\". Escriba un número entero de 5 a 360.",
                "celebrant \"nobody-known\" no es nadie de esta agrupación; importe antes la lista de personas."))
        .body("bad.column", contains("date", "minutes", "celebrant"));
    send("en", "what=masses&dryRun=true", BAD)
        .body(
            "bad.reason", hasItem("\"4\" cannot stand here. Write a whole number from 5 to 360."));
  }

  @Test
  void how_entries_of_several_parts_are_written_is_said_in_it_too() {
    send(
            "es",
            "what=masses&dryRun=true",
            """
            church,date,time,minutes,named,brings,ministers,serving
            ht,2026-12-01,18:30,45,¿?,estola,cuatro,odo-larkspire:organista
            """)
        .body(
            "bad.reason",
            contains(
                startsWith("Aquí no puede ir \"¿?\". Escriba la clave de alguien"),
                startsWith("Aquí no puede ir \"estola\". Escriba una función (principal"),
                startsWith("Aquí no puede ir \"cuatro\". Escriba una clase de ministro"),
                startsWith(
                    "Aquí no puede ir \"odo-larkspire:organista\". Escriba la clave de una persona")));
  }

  @Test
  void a_job_says_it_in_the_language_of_whoever_asked() {
    String list =
        BAD
            + IntStream.range(0, AskImport.SHORT)
                .mapToObj(
                    i ->
                        "ht,2027-%02d-%02d,%02d:00,30,"
                            .formatted(1 + i / 60, 1 + i % 27, 6 + i % 15))
                .collect(Collectors.joining("\n", "", "\n"));

    String id = tried("es", "what=masses&dryRun=true&background=true", list);

    asking("es")
        .get("/api/imports/%s?wait=30".formatted(id))
        .then()
        .body("status", equalTo("tried"))
        .body(
            "bad.reason", hasItem("Aquí no puede ir \"4\". Escriba un número entero de 5 a 360."));
    Page.of(page("es", id)).says("Escriba un número entero de 5 a 360.").keepsSilentOn("Write a");
  }

  @Test
  void what_the_events_of_a_calendar_come_to_is_said_in_it_too() {
    String calendar =
        new String(
            Ics.file(
                "UID:w@parish|SUMMARY:Boda en sa|DTSTART:20270609T140000|DURATION:PT45M",
                "UID:m@parish|SUMMARY:Consejo|LOCATION:HT|DTSTART:20270607T190000"),
            StandardCharsets.UTF_8);
    String what = "what=calendar&dryRun=true&from=2027-06-01&to=2027-06-30";

    Page.of(page("es", tried("es", what, calendar)))
        .says(
            "miércoles 9 de junio de 2027, 14:00, Saint Anne: Boda en sa (nueva)",
            "Su título no nombra ninguna Misa ni otra liturgia; se omite.")
        .keepsSilentOn("(new)", "Its title");
    Page.of(page("en", tried("en", what, calendar)))
        .says("Wednesday 9 June 2027, 14:00, Saint Anne: Boda en sa (new)", "Its title names no");
  }

  private static ValidatableResponse send(String language, String said, String list) {
    return asking(language)
        .contentType(list.startsWith("BEGIN") ? "text/calendar" : "text/csv")
        .body(list.getBytes(StandardCharsets.UTF_8))
        .post("/api/imports?" + said)
        .then();
  }

  private static String tried(String language, String said, String list) {
    return send(language, said, list).statusCode(202).extract().path("id");
  }

  private static String page(String language, String id) {
    return asking(language).accept("text/html").get("/import/" + id).asString();
  }

  private static RequestSpecification asking(String language) {
    return given().header("Accept-Language", language);
  }
}
