package vestiary.review;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.send;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.put;
import static vestiary.scenario.Sending.with;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Page;
import vestiary.scenario.Planning;
import vestiary.scenario.Scenario;

/** The pastor looks at the week from 7 December 2026 and signs it; then things change. */
@QuarkusTest
class ReviewTest {

  private static final String WEEK = "2026-W50";
  private static final String PAGE = "/review/2026-12-07";
  private static final String COVERAGE = "/api/coverage?week=" + WEEK;
  private static final String SIGN = "/api/coverage/" + WEEK + "/sign";

  @Inject Scenario scenario;
  @Inject OwnerDatabase owner;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void the_page_has_every_church_of_the_week_with_its_masses_and_what_stands_in_the_way() {
    page(PAGE)
        .says("Review · Advent, second week")
        .says("7 to 13 December 2026")
        .says("Holy Trinity")
        .says("Saint Anne")
        .says("Oakhallow, three concelebrants and two deacons")
        .says("Three concelebrants need white; two white sets are there.")
        .says("not planned yet")
        .says("Leave on file:")
        .says("Sign the week");
  }

  @Test
  void a_note_leads_to_why_and_to_what_mends_it_where_there_is_a_page_for_that() {
    post("/api/people/cosmas-ilverton/absences", Map.of("from", "2026-12-09", "to", "2026-12-09"))
        .then()
        .statusCode(201);
    List<Map<String, Object>> clashes = Asking.clashes("2026-12-07", "2026-12-13");
    String shortage = way(clashes, "shortage");
    String nobody = way(clashes, "no-celebrant");

    Page now = page(PAGE).is(200).links(shortage).links(shortage + "#mends").links(nobody);
    assertFalse(now.html().contains(nobody + "#mends"), "that page has no remedies");

    String signed = post(SIGN, Map.of()).then().statusCode(201).extract().path("id");
    Page then = page("/review/2026-12-07/signed/" + signed);
    assertFalse(then.html().contains("/clashes/"), "they may be gone by now");
  }

  /** To the page of the first clash of that kind. */
  private static String way(List<Map<String, Object>> clashes, String kind) {
    Map<String, Object> first =
        clashes.stream().filter(one -> kind.equals(one.get("kind"))).findFirst().orElseThrow();
    Object start = ((List<?>) first.get("masses")).get(0);
    String date =
        Asking.list("/api/masses?from=2026-12-07&to=2026-12-13").stream()
            .filter(mass -> start.equals(mass.get("id")))
            .map(mass -> mass.get("start").toString().substring(0, 10))
            .findFirst()
            .orElseThrow();
    return "/clashes/%s/%s".formatted(date, first.get("id"));
  }

  @Test
  void masses_of_priests_are_counted_as_the_cluster_counts_and_both_ways_where_they_differ() {
    page(PAGE)
        .says(
            "counted by the calendar day",
            "Tarnwick, Saturday 12 December: by the calendar day 1, by the liturgical day 0.",
            "Tarnwick, Sunday 13 December: by the calendar day 2, by the liturgical day 3.");

    put("/api/settings", Map.of("policies", Map.of("countBy", "liturgical")))
        .then()
        .statusCode(200);

    page(PAGE)
        .says(
            "counted by the liturgical day",
            "Tarnwick, Sunday 13 December: by the liturgical day 3, by the calendar day 2.");
  }

  @Test
  void once_planned_it_says_what_is_worn_and_what_brings_it() {
    Planning.applied("2026-12-07", "2026-12-13");

    get(COVERAGE)
        .then()
        .statusCode(200)
        .body("masses.find { it.start.startsWith('2026-12-08T18:30') }.vestments", hasItem("HT-W1"))
        .body("masses.collect { it.journeys }.flatten()", hasItem(containsString(" from ")));
  }

  @Test
  void signing_keeps_the_week_as_it_was_and_a_later_change_is_told() {
    String signed =
        post(SIGN, Map.of("note", "The jubilee is the one to watch."))
            .then()
            .statusCode(201)
            .body("turn", equalTo(1))
            .extract()
            .path("id");
    get(COVERAGE).then().body("signed", hasSize(1)).body("changes", empty());

    Map<String, Object> jubilee = Asking.mass("sa", "2026-12-08T18:30");
    put("/api/masses/" + jubilee.get("id"), with(jubilee, "concelebrants", 4))
        .then()
        .statusCode(200);

    get(COVERAGE)
        .then()
        .body(
            "changes",
            hasItem(
                "Saint Anne, 18:30: with him four concelebrants and two deacons instead of three concelebrants and two deacons."));
    page(PAGE)
        .says("The jubilee is the one to watch.")
        .says("instead of three concelebrants and two deacons");
    page("/review/2026-12-07/signed/" + signed)
        .says("as it was signed")
        .says("three concelebrants and two deacons")
        .keepsSilentOn("four concelebrants");
  }

  @Test
  void a_week_that_was_changed_while_it_was_looked_at_is_not_signed_and_the_note_stays() {
    String seen = get(COVERAGE).path("seen");
    Map<String, Object> jubilee = Asking.mass("sa", "2026-12-08T18:30");
    put("/api/masses/" + jubilee.get("id"), with(jubilee, "deacons", 1)).then().statusCode(200);

    send(
            PAGE,
            Map.of(
                "note",
                List.of("I have read it all."),
                "seen",
                List.of(seen),
                "turn",
                List.of("0")))
        .is(409)
        .says("Somebody changed this week while you were at it.")
        .says("I have read it all.");

    get(COVERAGE).then().body("signed", empty());
  }

  @Test
  void of_two_who_sign_upon_the_same_signature_the_second_is_told() {
    String seen = get(COVERAGE).path("seen");
    Map<String, List<String>> form =
        Map.of("note", List.of(""), "seen", List.of(seen), "turn", List.of("0"));

    send(PAGE, form).leadsTo(PAGE);
    send(PAGE, form).is(409).says("Somebody changed this week");

    get(COVERAGE).then().body("signed.turn", contains(1));
  }

  @Test
  void of_many_who_sign_at_the_same_moment_each_signature_has_a_turn_of_its_own() throws Exception {
    int many = 8;
    CountDownLatch gate = new CountDownLatch(1);
    ExecutorService people = Executors.newFixedThreadPool(many);
    List<Future<Integer>> answers = new ArrayList<>();
    for (int i = 0; i < many; i++) {
      answers.add(
          people.submit(
              () -> {
                gate.await();
                return post(SIGN, Map.of("note", "")).statusCode();
              }));
    }
    gate.countDown();
    int signed = 0;
    for (Future<Integer> answer : answers) {
      int status = answer.get();
      signed += status == 201 ? 1 : 0;
      assertTrue(status == 201 || status == 409, "answered " + status);
    }
    people.shutdown();

    get(COVERAGE).then().body("signed.turn", contains(signed));
  }

  @Test
  void what_was_signed_can_be_changed_by_nobody_not_even_the_owner_of_the_database()
      throws SQLException {
    post(SIGN, Map.of("note", "")).then().statusCode(201);

    try (Connection database = owner.getConnection();
        Statement statement = database.createStatement()) {
      SQLException refused =
          assertThrows(
              SQLException.class,
              () -> statement.executeUpdate("UPDATE signed_week SET signed_at = now()"));
      assertTrue(refused.getMessage().contains("never changed"), refused.getMessage());
    }
  }

  @Test
  void a_week_that_does_not_exist_is_refused_in_words() {
    get("/api/coverage?week=2026-W54").then().statusCode(404);
    get("/api/coverage?week=next").then().statusCode(404);
    get("/api/coverage").then().statusCode(400);
    page("/review").says("Review · ");
  }

  @Test
  void a_note_of_more_than_two_thousand_characters_is_refused_and_nothing_is_signed() {
    post(SIGN, Map.of("note", "x".repeat(2001))).then().statusCode(400);

    get(COVERAGE).then().body("signed", empty());
  }
}
