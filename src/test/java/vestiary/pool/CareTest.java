package vestiary.pool;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.matchesRegex;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** A piece at the cleaner, being mended, or lent outside. It is noon (UTC) on 30 November 2026. */
@QuarkusTest
class CareTest {

  private static final String CARE = "/api/pieces/HT-W1-C/care";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void one_white_chasuble() {
    scenario.empty();
    Sending.church("ht");
    Sending.piece("HT-W1-C", "chasuble", "white", "ht");
  }

  @ParameterizedTest
  @CsvSource({
    "2026-12-08, 2026-12-11, 2026-12-08T00:00:00-06:00, 2026-12-12T00:00:00-06:00",
    "2026-12-08, 2026-12-08, 2026-12-08T00:00:00-06:00, 2026-12-09T00:00:00-06:00",
    "2026-12-08T18:30, 2026-12-08T20:15, 2026-12-08T18:30:00-06:00, 2026-12-08T20:15:00-06:00",
    "2026-12-09T00:30Z, 2026-12-09T02:15:00Z, 2026-12-08T18:30:00-06:00, 2026-12-08T20:15:00-06:00",
    "2027-03-13, 2027-03-14, 2027-03-13T00:00:00-06:00, 2027-03-15T00:00:00-05:00",
    "2026-11-01T01:30-05:00, 2026-11-01T01:30-06:00, 2026-11-01T01:30:00-05:00, 2026-11-01T01:30:00-06:00"
  })
  void a_date_counts_whole_and_a_time_to_the_minute(
      String from, String to, String begins, String ends) {
    post(CARE, Map.of("from", from, "to", to, "reason", "Cleaner"))
        .then()
        .statusCode(201)
        .body("from", equalTo(begins))
        .body("to", equalTo(ends))
        .body("reason", equalTo("Cleaner"));
  }

  @Test
  void without_an_end_it_lasts_until_further_notice() {
    put("2026-12-08", "").then().statusCode(201).body("to", nullValue());

    get("/api/pieces/HT-W1-C").then().body("care", hasSize(1)).body("care[0].to", nullValue());
  }

  @Test
  void it_ends_after_it_begins() {
    refusing.unfit(() -> put("2026-12-08", "2026-12-07"), "to");
    refusing.unfit(() -> put("2026-12-08T18:30", "2026-12-08T18:30"), "to");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "soon",
        "2026-02-29",
        "8.12.2026",
        "2026-12-08T25:00",
        "1899-12-31",
        "9999-01-01",
        "+999999999-12-31",
        "+999999999-12-31T23:59:59-18:00",
        "-999999999-01-01T00:00:00+18:00"
      })
  void what_is_no_date_is_refused(String from) {
    refusing.unfit(() -> put(from, ""), "from");
  }

  @Test
  void it_needs_a_beginning_and_a_reason() {
    refusing.unfit(() -> post(CARE, Map.of()), "from", "reason");
    refusing.unfit(
        () -> post(CARE, Map.of("from", "2026-12-08", "reason", "r".repeat(301))), "reason");
  }

  @Test
  void a_piece_is_in_care_once_at_a_time() {
    put("2026-12-08", "2026-12-11").then().statusCode(201);

    refusing
        .refused(409, "taken", () -> put("2026-12-11", "2026-12-20"))
        .body("detail", containsString("HT-W1-C is in care already"));
    refusing.refused(409, "taken", () -> put("2026-12-01", ""));
    put("2026-12-12", "").then().statusCode(201);
    put("2026-12-01", "2026-12-07").then().statusCode(201);
  }

  @Test
  void two_people_at_the_same_moment_put_it_in_care_once() {
    List<Response> answers =
        IntStream.range(0, 6)
            .mapToObj(i -> CompletableFuture.supplyAsync(() -> put("2026-12-08", "2026-12-11")))
            .toList()
            .stream()
            .map(CompletableFuture::join)
            .toList();

    assertEquals(1, answers.stream().filter(a -> a.statusCode() == 201).count());
    for (Response refused : answers.stream().filter(a -> a.statusCode() != 201).toList()) {
      refused
          .then()
          .statusCode(409)
          .contentType("application/problem+json")
          .body("type", equalTo("/problems/taken"))
          .body("detail", matchesRegex(".*(already).*"));
    }
    get("/api/pieces/HT-W1-C").then().body("care", hasSize(1));
  }

  @Test
  void what_has_not_begun_is_struck_out() {
    String id = put("2026-12-08", "").jsonPath().getString("id");

    delete(CARE + "/" + id).then().statusCode(204);

    get("/api/pieces/HT-W1-C").then().body("care", equalTo(List.of()));
    refusing.notThere(() -> delete(CARE + "/" + id));
  }

  @Test
  void what_goes_on_ends_now() {
    String id = put("2026-11-20", "2026-12-18").jsonPath().getString("id");

    delete(CARE + "/" + id).then().statusCode(204);

    get("/api/pieces/HT-W1-C").then().body("care[0].to", equalTo("2026-11-30T06:00:00-06:00"));
    put("2026-12-01", "").then().statusCode(201);
  }

  @Test
  void what_is_over_stays_as_it_was() {
    String id = put("2026-11-01", "2026-11-02").jsonPath().getString("id");

    delete(CARE + "/" + id).then().statusCode(204);

    get("/api/pieces/HT-W1-C").then().body("care[0].to", equalTo("2026-11-03T00:00:00-06:00"));
  }

  @Test
  void a_list_shows_the_care_that_is_not_over() {
    put("2026-11-01", "2026-11-02").then().statusCode(201);
    put("2026-12-08", "2026-12-11").then().statusCode(201);

    get("/api/pieces").then().body("[0].care.from", equalTo(List.of("2026-12-08T00:00:00-06:00")));
  }

  @Test
  void an_unknown_piece_or_care_is_not_there() {
    Sending.piece("HT-W2-C", "chasuble", "white", "ht");
    String id = put("2026-12-08", "").jsonPath().getString("id");

    refusing.notThere(
        () -> post("/api/pieces/X/care", Map.of("from", "2026-12-08", "reason", "Moths")));
    refusing.notThere(() -> delete(CARE + "/x"));
    refusing.notThere(() -> delete("/api/pieces/HT-W2-C/care/" + id));
  }

  private static Response put(String from, String to) {
    return post(CARE, Map.of("from", from, "to", to, "reason", "Moths"));
  }
}
