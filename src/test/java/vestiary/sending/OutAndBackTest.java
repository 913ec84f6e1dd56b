package vestiary.sending;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.Asking;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Planning;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** A set leaves and returns. It is noon (UTC), 06:00 there, on Monday 30 November 2026. */
@QuarkusTest
class OutAndBackTest {

  private static final String OUT = "/api/sets/HT-W1/out";
  private static final String BACK = "/api/sets/HT-W1/back";
  private static final Map<String, Object> TO_SAINT_ANNE = Map.of("church", "sa");

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject OwnerDatabase database;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void a_set_goes_with_all_its_pieces_and_is_due_in_three_days() {
    post(OUT, TO_SAINT_ANNE)
        .then()
        .statusCode(200)
        .body("piece", equalTo(List.of("HT-W1-C", "HT-W1-S")))
        .body("state", equalTo(List.of("out", "out")))
        .body("church", equalTo(List.of("sa", "sa")))
        .body("[0].due", equalTo("2026-12-04T00:00:00-06:00"))
        .body(
            "[0].sentence",
            containsString("Out at Saint Anne since Monday 30 November, 06:00; due Thursday"));
  }

  @Test
  void it_comes_home_and_the_record_stands() {
    post(OUT, Sending.with(TO_SAINT_ANNE, "carrier", "Greta Holm")).then().statusCode(200);

    post(BACK, Map.of("taker", "Martha Kell", "condition", "wax on the hem"))
        .then()
        .statusCode(200)
        .body("state", equalTo(List.of("in", "in")))
        .body("church", equalTo(List.of("ht", "ht")))
        .body("[0].sent", hasSize(1))
        .body("[0].sent[0].carrier", equalTo("Greta Holm"))
        .body("[0].sent[0].back", equalTo("2026-11-30T06:00:00-06:00"))
        .body("[0].sent[0].backAt", equalTo("ht"))
        .body("[0].sent[0].taker", equalTo("Martha Kell"))
        .body("[0].sent[0].conditionBack", equalTo("wax on the hem"))
        .body("[0].sentence", containsString("At Holy Trinity"))
        .body("[0].sentence", containsString("taken in by Martha Kell"));
  }

  @Test
  void it_may_stay_where_it_was_or_be_taken_in_elsewhere() {
    post(OUT, TO_SAINT_ANNE).then().statusCode(200);
    post(BACK, Map.of("church", "sj"))
        .then()
        .statusCode(200)
        .body("church", equalTo(List.of("sj", "sj")))
        .body("[0].sentence", containsString("At Saint Joseph, not at home"));

    get("/api/whereabouts/ht-w1-s").then().statusCode(200).body("[0].church", equalTo("sj"));
  }

  @Test
  void one_piece_can_stay_behind_and_the_pieces_are_told_apart() {
    post(OUT, Sending.with(TO_SAINT_ANNE, "without", List.of("HT-W1-S")))
        .then()
        .statusCode(200)
        .body("state", equalTo(List.of("out", "in")));

    refusing
        .refused(409, "taken", () -> post(OUT, TO_SAINT_ANNE))
        .body("detail", containsString("HT-W1-C is out already: at Saint Anne"))
        .body("detail", containsString("say that the set goes without it"));
    post("/api/pieces/HT-W1-S/out", Map.of("whom", "the cathedral"))
        .then()
        .statusCode(200)
        .body("[0].church", nullValue())
        .body("[0].sentence", containsString("Out, with the cathedral"));
  }

  @Test
  void a_set_may_come_back_without_its_stole() {
    post(OUT, TO_SAINT_ANNE).then().statusCode(200);

    post(BACK, Map.of("without", List.of("HT-W1-S")))
        .then()
        .statusCode(200)
        .body("state", equalTo(List.of("in", "out")));
    post(BACK, Map.of()).then().statusCode(200).body("state", equalTo(List.of("in", "in")));
  }

  @Test
  void between_parishes_it_is_a_loan_and_within_one_it_is_none() {
    post(OUT, TO_SAINT_ANNE).then().statusCode(200);
    post("/api/sets/SA-W1/out", Map.of("church", "sm")).then().statusCode(200);

    assertEquals(
        List.of("HT-W1-C", "HT-W1-S", "OL-D1"),
        Asking.list("/api/loans?open=true").stream().map(l -> l.get("piece")).toList());
    assertEquals(2, Asking.list("/api/loans?parish=saint anne").size());
    assertEquals(5, Asking.list("/api/out").size());
  }

  @Test
  void what_goes_to_the_mass_it_is_planned_for_becomes_that() {
    Planning.applied("2026-12-07", "2026-12-13");
    Map<String, Object> jubilee = Asking.mass("sa", "2026-12-08T18:30");
    String set = plannedFrom("ht", jubilee).replaceAll("-[CS]$", "");

    post("/api/sets/%s/out".formatted(set), Map.of("mass", jubilee.get("id")))
        .then()
        .statusCode(200)
        .body("[0].sent[0].mass", equalTo(jubilee.get("id")))
        .body("[0].church", equalTo("sa"));

    assertEquals(0, chasubleClashes());
  }

  @Test
  void out_elsewhere_it_is_missing_where_it_was_planned() {
    Planning.applied("2026-12-07", "2026-12-13");
    Map<String, Object> jubilee = Asking.mass("sa", "2026-12-08T18:30");
    assertEquals(0, chasubleClashes());

    carried("ht", jubilee)
        .forEach(
            piece ->
                post(
                        "/api/pieces/%s/out".formatted(piece),
                        Map.of("whom", "the cathedral", "due", "2026-12-20"))
                    .then()
                    .statusCode(200));

    assertEquals(1, chasubleClashes());
  }

  private static long chasubleClashes() {
    return Asking.clashes("2026-12-08", "2026-12-08").stream()
        .filter(c -> c.get("pieceKind").equals("chasuble"))
        .count();
  }

  @Test
  void what_somebody_holds_is_refused_with_who_and_until_when() throws SQLException {
    Map<String, Object> jubilee = Asking.mass("sa", "2026-12-08T18:30");
    hold("HT-W1-C", jubilee);

    refusing
        .refused(409, "taken", () -> post(OUT, Map.of("church", "sj", "due", "2026-12-10")))
        .body("detail", containsString("HT-W1-C is held for Father Fintan Oakhallow, Mass at"))
        .body("detail", containsString("until Tuesday 8 December, 20:15"));
    post(OUT, Map.of("church", "sj", "due", "2026-12-08T12:00")).then().statusCode(200);
  }

  @Test
  void what_goes_for_what_it_is_held_for_becomes_that() throws SQLException {
    Map<String, Object> jubilee = Asking.mass("sa", "2026-12-08T18:30");
    hold("HT-W1-C", jubilee);

    post(OUT, Map.of("church", "sa", "due", "2026-12-09"))
        .then()
        .statusCode(200)
        .body("[0].sent[0].mass", equalTo(jubilee.get("id")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"2026-11-29", "2026-11-30T05:59", "soon", "2031-01-01", "2026-13-01"})
  void due_lies_ahead_and_is_a_date(String due) {
    refusing.unfit(() -> post(OUT, Sending.with(TO_SAINT_ANNE, "due", due)), "due");
  }

  @Test
  void it_goes_to_one_place_that_is_known() {
    refusing.unfit(() -> post(OUT, Map.of()), "church");
    refusing.unfit(() -> post(OUT, Map.of("church", "sa", "whom", "the cathedral")), "church");
    refusing.unfit(() -> post(OUT, Map.of("church", "nowhere")), "church");
    refusing.notThere(() -> post(OUT, Map.of("mass", "00000000-0000-0000-0000-000000000000")));
    refusing.unfit(
        () -> post(OUT, Sending.with(TO_SAINT_ANNE, "without", List.of("SA-W1-C"))), "without");
    refusing.unfit(
        () -> post(OUT, Sending.with(TO_SAINT_ANNE, "without", List.of("HT-W1-C", "HT-W1-S"))),
        "without");
    refusing.unfit(
        () -> post(OUT, Sending.with(TO_SAINT_ANNE, "condition", "x".repeat(301))), "condition");
  }

  @Test
  void unknown_codes_are_not_there() {
    refusing.notThere(() -> post("/api/sets/NO-SET/out", TO_SAINT_ANNE));
    refusing.notThere(() -> post("/api/pieces/NO-PIECE/out", TO_SAINT_ANNE));
    refusing.notThere(() -> post("/api/pieces/NO-PIECE/back", Map.of()));
    refusing.notThere(() -> get("/api/whereabouts/NO-PIECE"));
  }

  @Test
  void what_is_not_out_does_not_come_back() {
    refusing
        .refused(409, "taken", () -> post(BACK, Map.of()))
        .body("detail", containsString("HT-W1 is not out"));
  }

  @Test
  void what_may_not_leave_stays() {
    refusing
        .refused(400, "unfit-field", () -> post("/api/sets/HT-W4/out", TO_SAINT_ANNE))
        .body("detail", containsString("HT-W4-C does not leave its church"));
    refusing
        .refused(400, "unfit-field", () -> post("/api/sets/HT-B1/out", TO_SAINT_ANNE))
        .body("detail", containsString("goes on asking alone"));
    post("/api/sets/HT-B1/out", Sending.with(TO_SAINT_ANNE, "ownersAsked", true))
        .then()
        .statusCode(200);
    post("/api/sets/HT-W4/out", Map.of("church", "ht")).then().statusCode(200);
  }

  @Test
  void what_is_in_care_or_out_cannot_go_or_be_removed() {
    refusing
        .refused(409, "taken", () -> post("/api/sets/SA-W3/out", Map.of("church", "ht")))
        .body("detail", containsString("in care"));
    post(OUT, TO_SAINT_ANNE).then().statusCode(200);

    refusing
        .refused(409, "taken", () -> delete("/api/pieces/HT-W1-C"))
        .body("detail", containsString("HT-W1-C is out"));
    refusing
        .refused(
            409, "taken", () -> post("/api/movements/home", Map.of("pieces", List.of("HT-W1-C"))))
        .body("detail", containsString("HT-W1-C is out"));
  }

  @Test
  void of_two_with_the_same_set_in_their_hands_one_wins_and_the_other_is_told() {
    List<Response> answers = both(() -> post(OUT, TO_SAINT_ANNE));

    assertEquals(List.of(200, 409), answers.stream().map(Response::statusCode).sorted().toList());
    answers.stream()
        .filter(a -> a.statusCode() == 409)
        .forEach(a -> a.then().body("detail", containsString("is out already: at Saint Anne")));
    assertEquals(3, Asking.list("/api/out").size());
  }

  @Test
  void of_two_who_take_it_in_one_does() {
    post(OUT, TO_SAINT_ANNE).then().statusCode(200);

    List<Response> answers = both(() -> post(BACK, Map.of()));

    assertEquals(List.of(200, 409), answers.stream().map(Response::statusCode).sorted().toList());
    assertTrue(
        answers.stream().anyMatch(a -> a.asString().contains("taken it in just now")),
        answers.toString());
  }

  private static List<Response> both(Supplier<Response> request) {
    return Stream.of(1, 2)
        .map(person -> CompletableFuture.supplyAsync(request, task -> new Thread(task).start()))
        .toList()
        .stream()
        .map(CompletableFuture::join)
        .toList();
  }

  private static String plannedFrom(String church, Map<String, Object> mass) {
    return carried(church, mass).get(0);
  }

  private static List<String> carried(String church, Map<String, Object> mass) {
    return Asking.list("/api/movements?from=2026-12-08&to=2026-12-08").stream()
        .filter(m -> m.get("from").equals(church) && m.get("to").equals(mass.get("church")))
        .flatMap(m -> ((List<?>) m.get("pieces")).stream())
        .map(Object::toString)
        .filter(code -> code.matches("HT-W\\d-C"))
        .toList();
  }

  /** As a sacristan holds a piece for a Mass. */
  private void hold(String piece, Map<String, Object> mass) throws SQLException {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(
          """
          insert into occupation (cluster_id, id, piece_id, state, starts, ends, church_id, mass_id, reason, standing, depth, version)
          select p.cluster_id, gen_random_uuid(), p.id, 'held', m.starts - interval '30 min',
                 m.starts + interval '105 min', m.church_id, m.id, '', true, 0, 0
          from piece p join mass m on m.cluster_id = p.cluster_id
          where p.code = '%s' and m.id = '%s'
          """
              .formatted(piece, mass.get("id")));
    }
  }
}
