package vestiary.movement;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.press;
import static vestiary.scenario.Browsing.send;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Planning;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;

/** A journey is given to somebody by name, who says yes or no. */
@QuarkusTest
class AskACarrierTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void a_week_with_a_plan_that_holds() {
    scenario.load();
    Planning.applied(Journeys.MONDAY, Journeys.SUNDAY);
  }

  @Test
  void asked_accepted_done_with_who_and_what_at_every_step() {
    Map<String, Object> trip = Journeys.all().get(0);
    Object id = trip.get("id");
    assertEquals("proposed", trip.get("state"));

    Map<String, Object> asked = Journeys.ask(id, "Greta Holm");
    assertEquals(List.of("asked", "Greta Holm"), List.of(asked.get("state"), asked.get("carrier")));
    page("/movements/" + id).says("Greta Holm was asked", "by Bram", "Yes, I take it");

    Journeys.answer(id, "accept", asked.get("version")).then().statusCode(200);
    assertEquals("accepted", Journeys.one(id).get("state"));
    page("/movements?week=2026-12-07").says("Greta Holm", "says yes");

    post("/api/movements/%s/done".formatted(id), Map.of()).then().statusCode(200);
    assertEquals("done", Journeys.one(id).get("state"));
    page("/movements?week=2026-12-07").says("brought");
  }

  @Test
  void an_answer_is_given_by_one_press_on_the_page() {
    Object id = Journeys.all().get(0).get("id");
    String address = "/movements/" + id;
    page(address).says("What rides", "garment bag", "Ask somebody");

    send(address + "/ask", Map.of("carrier", List.of("Greta Holm"))).leadsTo(address);
    send(address + "/accept", page(address).form(address + "/accept")).leadsTo(address);

    page(address).says("Greta Holm said yes", "It is there");
    press(address + "/withdraw").leadsTo(address);
    page(address).says("Ask somebody");
  }

  @Test
  void a_form_without_a_name_keeps_what_was_typed() {
    String address = "/movements/" + Journeys.all().get(0).get("id");

    send(address + "/ask", Map.of("carrier", List.of(" "), "by", List.of("Bram")))
        .is(400)
        .faults("carrier", "This is missing.")
        .keeps(Map.of("by", List.of("Bram")), address + "/ask");
  }

  @Test
  void a_priest_is_found_by_the_name_the_plan_calls_him() {
    Map<String, Object> trip = Journeys.ofRider();
    int people = Asking.list("/api/people").size();

    Journeys.ask(trip.get("id"), trip.get("by").toString());

    assertEquals(people, Asking.list("/api/people").size());
  }

  @Test
  void a_riders_no_is_planned_round_and_only_offered() {
    Map<String, Object> trip = Journeys.ofRider();
    Object id = trip.get("id");
    Journeys.ask(id, trip.get("by").toString());

    Map<String, Object> declined =
        post("/api/movements/%s/decline".formatted(id), Map.of())
            .then()
            .statusCode(200)
            .body("state", equalTo("declined"))
            .extract()
            .jsonPath()
            .getMap("");

    Map<String, Object> plan = Planning.finished(declined.get("offered").toString());
    assertFalse(
        Planning.list(plan, "movements").stream().anyMatch(one -> one.get("id").equals(id)),
        "he is to carry it all the same");
    assertEquals(false, plan.get("applied"));
    assertTrue(
        plan.get("difference").toString().contains(trip.get("by") + " takes nothing along"),
        plan.get("difference").toString());
    get("/api/movements/" + id).then().body("state", equalTo("declined"));
    page("/week/2026-11-30").says("takes nothing along", "Plan anew what this touches");
    page("/movements/" + id).links("/plans/" + plan.get("id")).says("said no");
  }

  @Test
  void who_said_no_is_not_asked_again_but_somebody_else_is() {
    Object id = Journeys.all().get(0).get("id");
    Journeys.ask(id, "Greta Holm");
    String offered =
        post("/api/movements/%s/decline".formatted(id), Map.of())
            .then()
            .statusCode(200)
            .extract()
            .path("offered");
    // What a No begins is at work meanwhile, and would change its own row.
    Planning.finished(offered);

    refusing
        .refused(
            409,
            "taken",
            () -> post("/api/movements/%s/ask".formatted(id), Map.of("carrier", "Greta Holm")))
        .body("detail", containsString("Greta Holm has said no to this journey"));
    assertEquals("asked", Journeys.ask(id, "Ansel Brook").get("state"));
  }

  @Test
  void of_two_who_answer_at_once_one_is_told_of_the_other() {
    Object id = Journeys.all().get(0).get("id");
    Object version = Journeys.ask(id, "Greta Holm").get("version");

    List<Response> answers =
        Stream.of("accept", "withdraw")
            .map(deed -> CompletableFuture.supplyAsync(() -> Journeys.answer(id, deed, version)))
            .toList()
            .stream()
            .map(CompletableFuture::join)
            .toList();

    assertEquals(1, answers.stream().filter(one -> one.statusCode() < 300).count());
    Response lost = answers.stream().filter(one -> one.statusCode() >= 300).findFirst().get();
    lost.then().statusCode(409).body("detail", containsString("Greta Holm"));
  }

  @Test
  void of_two_who_ask_at_once_one_is_told_of_the_other() {
    Object id = Journeys.all().get(0).get("id");

    List<Integer> answers =
        Stream.of("Greta Holm", "Ansel Brook")
            .map(
                name ->
                    CompletableFuture.supplyAsync(
                        () ->
                            post("/api/movements/%s/ask".formatted(id), Map.of("carrier", name))
                                .statusCode()))
            .toList()
            .stream()
            .map(CompletableFuture::join)
            .sorted()
            .toList();

    assertEquals(List.of(200, 409), answers);
  }

  @Test
  void an_applied_plan_without_the_journey_tells_whoever_was_asked_for_it() {
    Map<String, Object> trip =
        Journeys.all().stream().filter(one -> one.get("to").equals("sa")).findFirst().orElseThrow();
    Object id = trip.get("id");
    Object version = Journeys.ask(id, "Greta Holm").get("version");
    Asking.change(Asking.mass("sa", "2026-12-08T18:30"), Map.of("concelebrants", 0, "deacons", 0));
    Planning.applied(Journeys.MONDAY, Journeys.SUNDAY);

    refusing
        .refused(409, "taken", () -> Journeys.answer(id, "accept", version))
        .body("detail", containsString("Nobody need drive"));
    refusing.notThere(() -> get("/api/movements/" + id));
    page("/movements/" + id).says("nobody need drive", "Take the asking back");
    page("/movements?week=2026-12-07").says("Not needed any more", "Greta Holm");

    press("/movements/%s/withdraw".formatted(id)).leadsTo("/movements/" + id);
    page("/movements?week=2026-12-07").keepsSilentOn("Not needed any more");
  }

  @Test
  void a_plan_that_has_the_same_journey_leaves_the_answer_as_it_is() {
    Object id = Journeys.all().get(0).get("id");
    Journeys.ask(id, "Greta Holm");
    post("/api/movements/%s/accept".formatted(id), Map.of()).then().statusCode(200);
    String same =
        post("/api/plans", Map.of("from", Journeys.MONDAY, "to", Journeys.SUNDAY, "keep", true))
            .then()
            .extract()
            .path("id");
    Planning.finished(same);

    post("/api/plans/%s/apply".formatted(same), Map.of()).then().statusCode(200);

    assertEquals("accepted", Journeys.one(id).get("state"));
  }

  @Test
  void what_is_no_journey_is_not_there_and_changes_nothing() {
    for (String id : List.of("none", UUID.randomUUID().toString(), "%27%20or%201=1", "..%2Fx")) {
      refusing.notThere(() -> get("/api/movements/" + id));
      for (String deed : List.of("accept", "decline", "done", "withdraw")) {
        refusing.notThere(() -> post("/api/movements/%s/%s".formatted(id, deed), Map.of()));
      }
      refusing.notThere(
          () -> post("/api/movements/%s/ask".formatted(id), Map.of("carrier", "Greta Holm")));
    }
  }

  @Test
  void nobody_answers_before_somebody_is_asked() {
    Object id = Journeys.all().get(0).get("id");

    refusing
        .refused(409, "taken", () -> Journeys.answer(id, "accept", 0))
        .body("detail", containsString("Nobody was asked"));
    refusing.unfit(() -> post("/api/movements/%s/ask".formatted(id), Map.of()), "carrier");
    refusing.unfit(
        () ->
            post(
                "/api/movements/%s/ask".formatted(id),
                Map.of("carrier", "Greta Holm", "mail", "greta at home")),
        "mail");
  }

  @Test
  void another_clusters_journey_is_not_there() {
    Object id = Journeys.all().get(0).get("id");
    Journeys.ask(id, "Greta Holm");

    scenario.becomeAnother();

    refusing.notThere(() -> get("/api/movements/" + id));
    refusing.notThere(() -> Journeys.answer(id, "accept", 0));
  }
}
