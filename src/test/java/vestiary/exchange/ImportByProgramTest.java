package vestiary.exchange;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class ImportByProgramTest {

  private static final String OTHER_NAMES =
      "Kirche;Datum;Beginn;Notiz\nht;8/12/2026;6:30 pm;\"=1+1\"\n";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void two_churches() {
    scenario.empty();
    Sending.church("ht");
    Sending.church("sa");
  }

  @Test
  void columns_are_named_or_guessed() {
    send(
            OTHER_NAMES,
            Map.of("columns", "guess;note=Notiz", "same", "minutes=60", "days", "day-month-year"))
        .then()
        .statusCode(200)
        .body("lines", equalTo(1));

    Map<String, Object> mass = Asking.mass("ht", "2026-12-08T18:30");
    assertEquals("=1+1", mass.get("note"));
    assertEquals(60, mass.get("minutes"));
  }

  @Test
  void a_list_need_not_be_named_where_its_columns_name_it() {
    given()
        .contentType("text/csv")
        .body(Csv.file("from,to,minutes", "ht,sa,14"))
        .post("/api/imports?dryRun=false")
        .then()
        .statusCode(200)
        .body("what", equalTo("journeys"))
        .body("done", equalTo(true));
    refusing.unfit(
        () -> given().contentType("text/csv").body(Csv.file("a,b", "1,2")).post("/api/imports"),
        "what");
  }

  @Test
  void what_is_not_said_or_cannot_be_is_refused() {
    refusing.unfit(
        () -> send(OTHER_NAMES, Map.of("columns", "guess", "same", "minutes=60")), "days");
    refusing.unfit(() -> send(OTHER_NAMES, Map.of("columns", "organ=Kirche")), "columns");
    refusing.unfit(() -> send(OTHER_NAMES, Map.of("columns", "church=Orgel")), "columns");
    refusing.unfit(
        () -> send(OTHER_NAMES, Map.of("columns", "guess", "days", "backwards")), "days");
    refusing
        .refused(
            422,
            "bad-lines",
            () -> send(OTHER_NAMES, Map.of("columns", "church=Kirche", "days", "day-month-year")))
        .body("bad.column", equalTo(List.of("date", "time", "minutes")));
  }

  @Test
  void a_long_list_is_brought_in_beside_and_undone() {
    int lines = AskImport.SHORT + 40;
    String list =
        IntStream.range(0, lines)
            .mapToObj(
                i ->
                    "%s,2027-%02d-%02d,%02d:%02d,30"
                        .formatted(
                            i % 2 == 0 ? "ht" : "sa", 1 + i / 60, 1 + i % 27, 6 + i % 15, i % 60))
            .distinct()
            .collect(Collectors.joining("\n", "church,date,time,minutes\n", "\n"));
    int different = (int) list.lines().count() - 1;

    String id =
        send(list, Map.of("background", "true"))
            .then()
            .statusCode(202)
            .header("Location", containsString("/api/imports/"))
            .extract()
            .path("id");

    given()
        .get("/api/imports/%s?wait=30".formatted(id))
        .then()
        .statusCode(200)
        .body("status", equalTo("done"))
        .body("progress", equalTo(100))
        .body("good", equalTo(different));
    assertEquals(different, lines("masses"));
    given().delete("/api/imports/" + id).then().statusCode(204);
    assertEquals(0, lines("masses"));
  }

  @Test
  void a_calendar_is_answered_with_its_import() {
    byte[] calendar = Ics.file("UID:1|SUMMARY:Mass|LOCATION:HT|DTSTART:20261206T103000");

    String id =
        given()
            .contentType("text/calendar")
            .body(calendar)
            .post("/api/imports?what=calendar&dryRun=false&from=2026-12-01&to=2026-12-31")
            .then()
            .statusCode(202)
            .extract()
            .path("id");

    given().get("/api/imports/" + id).then().body("status", equalTo("done"));
    assertEquals(1, lines("masses"));
  }

  private static long lines(String what) {
    return given().get("/api/exports/%s.csv".formatted(what)).asString().lines().count() - 1;
  }

  private static Response send(String list, Map<String, String> said) {
    return given()
        .contentType("text/csv")
        .queryParams(said)
        .body(list.getBytes(StandardCharsets.UTF_8))
        .post("/api/imports?what=masses&dryRun=false");
  }
}
