package vestiary.exchange;

import static io.restassured.RestAssured.given;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import vestiary.scenario.Browsing;

/** Brings lists into the invented cluster, for tests of other rooms. */
public final class BringingIn {

  private BringingIn() {}

  /** One piece of that code; the id of the import. */
  public static String pieces(String code) {
    return given()
        .contentType("text/csv")
        .body("code,kind,home\r\n%s,alb,ht\r\n".formatted(code).getBytes(StandardCharsets.UTF_8))
        .post("/api/imports?dryRun=false&what=pieces")
        .then()
        .statusCode(200)
        .extract()
        .path("id");
  }

  /** An import that can be undone, a calendar that was brought in, and a file that waits. */
  public static void leaveTraces() {
    pieces("TRACE-1");
    String calendar =
        Browsing.sendList(
                ImportWords.CALENDAR,
                Ics.file("UID:trace|SUMMARY:Mass|LOCATION:HT|DTSTART:20270203T210000"))
            .wayOn();
    Browsing.goOn(calendar, Map.of("from", "2027-02-01", "to", "2027-02-28", "dryRun", "false"));
    waiting();
  }

  /** Address of a list that was sent and waits for its columns. */
  public static String waiting() {
    return Browsing.sendList("journeys", Csv.file("From,To,Fahrzeit", "ht,sa,14")).wayOn();
  }
}
