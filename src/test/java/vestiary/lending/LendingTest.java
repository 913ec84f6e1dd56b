package vestiary.lending;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.users.LettingIn.program;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Browsing;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Page;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/** Vestments of one cluster in another, for a while; the lender is the invented one. */
@QuarkusTest
class LendingTest {

  private static final Map<String, Object> OFFER =
      Map.of(
          "to", "ashmere-coast",
          "from", "2026-12-07",
          "until", "2026-12-13",
          "pieces", List.of("HT-W2"),
          "note", "The hem is loose");

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject LettingIn letting;
  @Inject OwnerDatabase database;
  @Inject AnswerOffer answers;

  private String ashmere;
  private String third;

  @BeforeEach
  void a_cluster_that_may_borrow_and_one_that_has_no_part_in_it() {
    scenario.load();
    ashmere = another("Ashmere Coast", "ss");
    third = another("Third Hill", "th");
  }

  @Test
  void what_is_accepted_is_in_the_borrowers_pool_for_the_time_and_away_from_the_lenders() {
    String id = offered(OFFER);
    Sending.get("/api/pieces/HT-W2-C").then().body("care", empty());
    as(ashmere).get("/api/pieces").then().body("", empty());
    as(ashmere).get("/api/lendings").then().body("[0].side", equalTo("borrower"));

    accept(ashmere, id, "ss")
        .then()
        .statusCode(200)
        .body("state", equalTo("accepted"))
        .body("church", equalTo("ss"))
        .body("with", equalTo("wenlow-valley"));

    as(ashmere)
        .get("/api/pieces/HT-W2-C")
        .then()
        .statusCode(200)
        .body("home", equalTo("ss"))
        .body("set", equalTo("HT-W2"))
        .body("owner", equalTo("Holy Trinity, Wenlow Valley"))
        .body("care[0].to", startsWith("2026-12-07T00:00"))
        .body("care[1].from", startsWith("2026-12-14T00:00"));
    Sending.get("/api/pieces/HT-W2-C")
        .then()
        .body("care[0].from", startsWith("2026-12-07T00:00"))
        .body("care[0].to", startsWith("2026-12-14T00:00"))
        .body("care[0].reason", equalTo("Lent to Ashmere Coast"));
  }

  @Test
  void either_says_that_it_is_back_and_then_it_is() {
    for (String side : List.of("borrower", "lender")) {
      String id = offered(OFFER);
      accept(ashmere, id, "ss").then().statusCode(200);

      Response back =
          side.equals("lender")
              ? Sending.post("/api/lendings/%s/return".formatted(id), Map.of("ending", "Clean"))
              : as(ashmere)
                  .body(Map.of("ending", "Clean"))
                  .post("/api/lendings/%s/return".formatted(id));

      back.then()
          .statusCode(200)
          .body("state", equalTo("returned"))
          .body("ending", equalTo("Clean"));
      as(ashmere).get("/api/pieces").then().body("", empty());
      as(ashmere).get("/api/sets").then().body("", empty());
      Sending.get("/api/pieces/HT-W2-C").then().body("care", empty());
      Sending.get("/api/lendings/" + id).then().body("state", equalTo("returned"));
    }
  }

  @Test
  void the_borrower_counts_it_on_these_days_and_on_no_other() {
    for (String day : List.of("2026-12-08", "2026-12-15")) {
      as(ashmere)
          .body(Map.of("church", "ss", "start", day + "T10:00"))
          .post("/api/masses")
          .then()
          .statusCode(201);
    }
    String short8 = "/api/clashes?from=2026-12-08&to=2026-12-08";
    as(ashmere).get(short8).then().body("kind", hasItem("shortage"));

    accept(ashmere, offered(OFFER), "ss").then().statusCode(200);

    as(ashmere).get(short8).then().body("", empty());
    as(ashmere)
        .get("/api/clashes?from=2026-12-15&to=2026-12-15")
        .then()
        .body("kind", hasItem("shortage"));
  }

  @Test
  void a_third_cluster_sees_nothing_of_it() {
    String id = offered(OFFER);

    as(third).get("/api/lendings").then().body("", empty());
    for (String deed : List.of("accept", "decline", "withdraw", "return")) {
      refusing.refused(
          404,
          "not-there",
          () ->
              as(third)
                  .body(Map.of("church", "th"))
                  .post("/api/lendings/%s/%s".formatted(id, deed)));
    }
    as(third).get("/api/lendings/" + id).then().statusCode(404);
  }

  @Test
  void each_side_says_what_is_its_own_to_say_and_says_it_once() {
    String id = offered(OFFER);
    String answer = "/api/lendings/%s/".formatted(id);

    refusing.refused(409, "taken", () -> Sending.post(answer + "accept", Map.of("church", "ht")));
    refusing.refused(409, "taken", () -> as(ashmere).post(answer + "withdraw"));
    refusing.refused(409, "taken", () -> as(ashmere).body("{}").post(answer + "return"));
    refusing.unfit(
        () -> as(ashmere).body(Map.of("church", "ht")).post(answer + "accept"), "church");
    as(ashmere)
        .body(Map.of("answer", "We have enough"))
        .post(answer + "decline")
        .then()
        .statusCode(200)
        .body("state", equalTo("declined"));
    refusing.refused(
        409, "taken", () -> as(ashmere).body(Map.of("church", "ss")).post(answer + "accept"));
    refusing.refused(409, "taken", () -> Sending.post(answer + "withdraw", Map.of()));
  }

  @Test
  void what_cannot_be_lent_is_told_piece_by_piece() {
    refusing.unfit(() -> Sending.post("/api/lendings", Map.of()), "to", "from", "until", "pieces");
    refusing.unfit(() -> Sending.post("/api/lendings", with("to", "nowhere")), "to");
    refusing.unfit(() -> Sending.post("/api/lendings", with("to", "wenlow-valley")), "to");
    refusing.unfit(() -> Sending.post("/api/lendings", with("until", "2026-12-06")), "until");
    refusing.unfit(() -> Sending.post("/api/lendings", with("pieces", List.of("XX"))), "pieces");
    // Does not leave its church; at the cleaner.
    refusing.unfit(() -> Sending.post("/api/lendings", with("pieces", List.of("HT-W4"))), "pieces");
    refusing.unfit(() -> Sending.post("/api/lendings", with("pieces", List.of("SA-W3"))), "pieces");
    accept(ashmere, offered(OFFER), "ss").then().statusCode(200);
    refusing.unfit(() -> Sending.post("/api/lendings", OFFER), "pieces");
    refusing.unfit(
        () -> as(ashmere).body(with("to", "third-hill")).post("/api/lendings"), "pieces");
  }

  @Test
  void what_is_lent_or_borrowed_is_changed_by_its_lending_alone() {
    accept(ashmere, offered(OFFER), "ss").then().statusCode(200);
    String care = Sending.get("/api/pieces/HT-W2-C").jsonPath().getString("care[0].id");
    String after = as(ashmere).get("/api/pieces/HT-W2-C").jsonPath().getString("care[1].id");

    refusing.refused(409, "taken", () -> Sending.delete("/api/pieces/HT-W2-C/care/" + care));
    refusing.refused(409, "taken", () -> Sending.delete("/api/pieces/HT-W2-C"));
    refusing.refused(409, "taken", () -> as(ashmere).delete("/api/pieces/HT-W2-C/care/" + after));
    refusing.refused(409, "taken", () -> as(ashmere).delete("/api/pieces/HT-W2-C"));
    refusing.refused(409, "taken", () -> as(ashmere).delete("/api/sets/HT-W2"));
    refusing.refused(
        409,
        "taken",
        () ->
            as(ashmere)
                .body(Map.of("kind", "chasuble", "colours", List.of("white", "red"), "home", "ss"))
                .put("/api/pieces/HT-W2-C"));
  }

  @Test
  void a_code_that_the_borrower_has_already_is_given_the_lenders_word() {
    as(ashmere)
        .body(Map.of("code", "ht-w2-c", "kind", "cope", "colours", List.of("red"), "home", "ss"))
        .post("/api/pieces")
        .then()
        .statusCode(201);

    accept(ashmere, offered(OFFER), "ss").then().statusCode(200);

    as(ashmere)
        .get("/api/pieces/wenlow-valley.HT-W2-C")
        .then()
        .statusCode(200)
        .body("kind", equalTo("chasuble"));
  }

  @Test
  void of_two_that_accept_the_same_piece_at_once_one_has_it_and_the_other_is_told()
      throws Exception {
    String toAshmere = offered(OFFER);
    String toThird = offered(with("to", "third-hill"));
    CountDownLatch start = new CountDownLatch(1);

    CompletableFuture<Response> one = at(start, () -> accept(ashmere, toAshmere, "ss"));
    CompletableFuture<Response> other = at(start, () -> accept(third, toThird, "th"));
    start.countDown();

    List<Response> answers = List.of(one.get(), other.get());
    assertEquals(List.of(200, 409), answers.stream().map(Response::statusCode).sorted().toList());
    Response loser = answers.stream().filter(a -> a.statusCode() == 409).findFirst().orElseThrow();
    loser
        .then()
        .contentType("application/problem+json")
        .body("detail", containsString("was lent elsewhere"));
    assertEquals(
        2,
        Stream.of(ashmere, third)
            .mapToInt(token -> as(token).get("/api/pieces").jsonPath().getList("").size())
            .sum());
  }

  @Test
  void what_is_not_back_in_time_stays_away_until_somebody_says_that_it_is() throws SQLException {
    String id = offered(OFFER);
    accept(ashmere, id, "ss").then().statusCode(200);
    letTheTimePass();

    Sending.get("/api/lendings/" + id).then().body("overdue", equalTo(true));
    Sending.get("/api/pieces/HT-W2-C")
        .then()
        .body("care[0].reason", equalTo("Lent to Ashmere Coast, and overdue"))
        .body("care[0].to", nullValue());
    Browsing.page("/lendings/" + id).says("nobody has said that it is");

    Sending.post("/api/lendings/%s/return".formatted(id), Map.of()).then().statusCode(200);

    Sending.get("/api/pieces/HT-W2-C").then().body("care[0].to", startsWith("2026-11-25T"));
  }

  @Test
  void a_demo_that_is_made_anew_leaves_nothing_of_it_behind() {
    accept(ashmere, offered(OFFER), "ss").then().statusCode(200);

    scenario.within(scenario.ours(), answers::endAll);

    as(ashmere).get("/api/pieces").then().body("", empty());
    Sending.get("/api/lendings").then().body("state", equalTo(List.of("returned")));
  }

  @Test
  void the_pages_say_the_same_to_both() {
    Page form = Browsing.page("/lendings/new").says("HT-W2, white chasuble and stole");
    Browsing.send(
            "/lendings",
            form.form("/lendings", Map.of("to", "nowhere", "from", "2026-12-07", "until", "")))
        .is(400)
        .faults("to", "No cluster of this server has the word \"nowhere\".");
    String id = offered(OFFER);

    Browsing.page("/lendings").says("Offered by you", "HT-W2", "to Ashmere Coast");
    Browsing.page("/lendings/" + id)
        .says("has not answered yet", "The hem is loose", "canon 1283", "Take the offer back");
    Browsing.press("/lendings/%s/withdraw".formatted(id)).leadsTo("/lendings/" + id);
    Browsing.page("/lendings/" + id).says("You took the offer back.");
    assertTrue(
        as(ashmere)
            .accept("text/html")
            .get("/lendings/" + id)
            .asString()
            .contains("Wenlow Valley took the offer back."));
    as(ashmere).accept("text/html").get("/lendings").then().body(not(containsString("Third")));
  }

  /** As no request could: what was agreed is never changed. */
  private void letTheTimePass() throws SQLException {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute("set session_replication_role = replica");
      statement.execute(
          "update lending set starts = '2026-11-20 06:00Z', ends = '2026-11-25 06:00Z'");
      statement.execute(
          """
          update occupation set starts = '2026-11-20 06:00Z', ends = '2026-11-25 06:00Z'
          where reason = 'Lent to Ashmere Coast'
          """);
    }
  }

  private static CompletableFuture<Response> at(CountDownLatch start, Supplier<Response> deed) {
    return CompletableFuture.supplyAsync(
        () -> {
          try {
            start.await();
          } catch (InterruptedException e) {
            throw new IllegalStateException(e);
          }
          return deed.get();
        },
        task -> new Thread(task).start());
  }

  private String another(String name, String church) {
    UUID id = scenario.openAnother();
    String token = letting.tokenIn(id, "honor", Role.ADMINISTRATOR);
    as(token)
        .body(Map.of("name", name, "calendar", "us"))
        .put("/api/settings")
        .then()
        .statusCode(200);
    as(token)
        .body(Map.of("slug", church, "name", "Church of " + church))
        .post("/api/churches")
        .then()
        .statusCode(201);
    return token;
  }

  private static RequestSpecification as(String token) {
    return program(token);
  }

  private static String offered(Map<String, Object> offer) {
    return Sending.post("/api/lendings", offer).then().statusCode(201).extract().path("id");
  }

  private static Response accept(String token, String id, String church) {
    return as(token).body(Map.of("church", church)).post("/api/lendings/%s/accept".formatted(id));
  }

  private static Map<String, Object> with(String field, Object value) {
    Map<String, Object> changed = new HashMap<>(OFFER);
    changed.put(field, value);
    return changed;
  }
}
