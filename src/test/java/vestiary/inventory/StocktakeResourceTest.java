package vestiary.inventory;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.put;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;

/** A program takes stock, as several phones do at once. */
@QuarkusTest
class StocktakeResourceTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  private String stocktake;

  @BeforeEach
  void stock_is_taken_of_saint_martin() {
    scenario.load();
    stocktake =
        "/api/stocktakes/"
            + post("/api/stocktakes", Map.of("church", "sm"))
                .then()
                .statusCode(201)
                .body("lines", hasSize(8))
                .extract()
                .path("id");
  }

  @Test
  void whoever_begins_again_counts_along() {
    post("/api/stocktakes", Map.of("church", "sm"))
        .then()
        .statusCode(201)
        .header("Location", containsString(stocktake));
    refusing.notThere(() -> post("/api/stocktakes", Map.of("church", "nowhere")));
    refusing.unfit(() -> post("/api/stocktakes", Map.of()), "church");
  }

  @Test
  void many_phones_tick_one_piece_and_it_is_ticked_once() {
    List<Response> answers =
        IntStream.range(0, 6)
            .mapToObj(i -> CompletableFuture.supplyAsync(() -> tick("SM-W1-C", "there")))
            .toList()
            .stream()
            .map(CompletableFuture::join)
            .toList();

    answers.forEach(answer -> answer.then().statusCode(200));
    get(stocktake)
        .then()
        .body("lines", hasSize(8))
        .body("lines.find { it.code == 'SM-W1-C' }.finding", equalTo("there"));
  }

  @Test
  void the_same_tick_again_changes_nothing_and_an_empty_one_takes_it_back() {
    tick("SM-W1-C", "there").then().statusCode(200);
    refusing.unchanged(() -> tick("SM-W1-C", "there")).then().statusCode(200);

    tick("SM-W1-C", "").then().body("lines.find { it.code == 'SM-W1-C' }.finding", equalTo(null));
  }

  @Test
  void the_label_of_a_set_ticks_all_its_pieces() {
    tick("sm-w1", "there")
        .then()
        .statusCode(200)
        .body(
            "lines.findAll { it.finding == 'there' }.code", equalTo(List.of("SM-W1-C", "SM-W1-S")));
  }

  @Test
  void what_is_not_expected_stays_or_goes_home() {
    tick("HT-W1-C", "there").then().body("lines", hasSize(9));
    tick("HT-W1-S", "there")
        .then()
        .body("lines.find { it.code == 'HT-W1-S' }.difference", equalTo(true));

    settle("HT-W1-C", "stays-here").then().statusCode(200);
    settle("HT-W1-S", "send-home").then().statusCode(200);

    get("/api/pieces/HT-W1-C")
        .then()
        .body("home", equalTo("sm"))
        .body("owner", equalTo("Holy Trinity"));
    get("/api/pieces/HT-W1-S").then().body("home", equalTo("ht"));
    get(stocktake)
        .then()
        .body(
            "lines.find { it.code == 'HT-W1-S' }.settled", equalTo("Taken home to Holy Trinity."));
  }

  @Test
  void what_was_missing_and_is_found_is_in_the_pool_again() {
    tick("SM-W1-C", "missing");
    settle("SM-W1-C", "mark-missing").then().statusCode(200);
    get("/api/pieces").then().body("find { it.code == 'SM-W1-C' }.care", hasSize(1));

    tick("SM-W1-C", "there").then().statusCode(200);

    get("/api/pieces").then().body("find { it.code == 'SM-W1-C' }.care", hasSize(0));
  }

  @Test
  void a_difference_is_settled_in_a_way_that_fits_it() {
    tick("SM-W1-C", "missing");

    refusing.unfit(() -> settle("SM-W1-C", "in-care"), "how");
    refusing.unfit(() -> settle("SM-W1-C", "burn"), "how");
    refusing.notThere(() -> settle("SM-W1-S", "put-right"));
    refusing.unfit(() -> tick("NO-SUCH", "there"), "code");
    refusing.unfit(() -> tick("SM-W1-C", "stolen"), "finding");
  }

  @Test
  void what_is_known_to_be_away_need_not_be_looked_for() {
    String ol =
        post("/api/stocktakes", Map.of("church", "ol"))
            .then()
            .body("lines.find { it.code == 'OL-D1' }.finding", equalTo("elsewhere"))
            .extract()
            .path("id");

    assertEquals(
        "Away, as is known: Out, with the cathedral, due Friday 27 November, three days overdue.",
        get("/api/stocktakes/" + ol).path("lines.find { it.code == 'OL-D1' }.settled"));
  }

  @Test
  void a_piece_that_was_counted_is_withdrawn_and_not_struck_out() {
    refusing
        .refused(409, "taken", () -> delete("/api/pieces/SM-W1-C"))
        .body("detail", containsString("Withdraw it from use instead"));

    post("/api/pieces/SM-W1-C/withdrawal", Map.of("reason", "Worn through", "to", "Buried"))
        .then()
        .statusCode(200)
        .body("withdrawn.on", equalTo("2026-11-30"));
    get("/api/pieces").then().body("find { it.code == 'SM-W1-C' }", equalTo(null));
    get("/api/inventories?church=sm").then().body("[0].withdrawn", equalTo(1));
    delete("/api/pieces/SM-W1-C/withdrawal").then().statusCode(204);
    get("/api/pieces").then().body("find { it.code == 'SM-W1-C' }.home", equalTo("sm"));
  }

  private Response tick(String code, String finding) {
    return put(stocktake + "/lines/" + code, Map.of("finding", finding, "note", ""));
  }

  private Response settle(String code, String how) {
    return post(stocktake + "/lines/%s/settling".formatted(code), Map.of("how", how));
  }
}
