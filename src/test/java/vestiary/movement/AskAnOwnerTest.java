package vestiary.movement;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.send;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.put;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Planning;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** Holy Trinity's white sets go to Saint Anne for the jubilee, on asking alone. */
@QuarkusTest
class AskAnOwnerTest {

  private static final String DAY = "2026-12-08";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  private String mass;

  @BeforeEach
  void a_plan_that_takes_what_is_lent_on_asking() {
    scenario.load();
    Map<String, Object> plan = Planning.applied(Journeys.MONDAY, Journeys.SUNDAY);
    mass = Asking.mass("sa", DAY + "T18:30").get("id").toString();
    Planning.list(plan, "assignments").stream()
        .filter(one -> one.get("mass").equals(mass))
        .map(one -> one.get("piece").toString())
        .filter(code -> !code.startsWith("SA-"))
        .forEach(AskAnOwnerTest::lendOnAskingAlone);
  }

  @Test
  void who_is_to_be_asked_is_listed_for_people_and_programs() {
    Map<String, Object> one = consent();

    assertEquals("to-ask", one.get("state"));
    assertEquals("sa", one.get("church"));
    page("/movements?week=2026-12-08")
        .says("Owners who are asked first", "To be asked.")
        .links(address(one));
    page(address(one)).says("Mass at Saint Anne on Tuesday 8 December, 18:30", "Yes, it may go");
  }

  @Test
  void a_yes_is_noted_with_who_noted_it() {
    Map<String, Object> one = consent();

    send(
            address(one) + "/grant",
            page(address(one)).form(address(one) + "/grant", Map.of("by", "Bram")))
        .leadsTo(address(one));

    assertEquals("granted", consent().get("state"));
    page(address(one)).says("The owner says yes, as Bram noted.");
  }

  @Test
  void a_no_takes_the_pieces_out_and_offers_a_plan_without_them() {
    Map<String, Object> one = consent();

    String offered =
        post(api(one) + "/refuse", Map.of("by", "Bram"))
            .then()
            .statusCode(200)
            .body("state", equalTo("refused"))
            .extract()
            .path("offered");

    Map<String, Object> plan = Planning.finished(offered);
    List<String> pieces =
        Planning.list(plan, "assignments").stream()
            .filter(worn -> worn.get("mass").equals(mass))
            .map(worn -> worn.get("piece").toString())
            .toList();
    List<?> kept = (List<?>) one.get("pieces");
    assertTrue(pieces.stream().noneMatch(kept::contains), pieces + " has some of " + kept);
    assertFalse(((List<?>) plan.get("difference")).isEmpty());
    page("/week/2026-12-07").says("its owner says no", "Plan anew what this touches");
  }

  @Test
  void a_no_that_becomes_a_yes_lets_the_pieces_go_again() {
    Map<String, Object> one = consent();
    post(api(one) + "/refuse", Map.of()).then().statusCode(200);

    post(api(one) + "/grant", Map.of()).then().statusCode(200).body("state", equalTo("granted"));

    page("/week/2026-12-07").keepsSilentOn("its owner says no");
  }

  @Test
  void of_two_answers_at_once_one_is_told_of_the_other() {
    Map<String, Object> one = consent();

    List<Integer> answers =
        Stream.of("grant", "refuse")
            .map(
                deed ->
                    CompletableFuture.supplyAsync(
                        () ->
                            post(api(one) + "/" + deed, Map.of("version", one.get("version")))
                                .statusCode()))
            .toList()
            .stream()
            .map(CompletableFuture::join)
            .sorted()
            .toList();

    assertEquals(List.of(200, 409), answers);
  }

  @Test
  void an_answer_to_what_was_seen_before_another_is_refused() {
    Map<String, Object> one = consent();
    post(api(one) + "/grant", Map.of("by", "Bram")).then().statusCode(200);

    refusing
        .refused(409, "taken", () -> post(api(one) + "/refuse", Map.of("version", 0)))
        .body("detail", containsString("yes was noted meanwhile by Bram"));
  }

  @Test
  void owners_who_are_not_to_be_asked_are_not_there() {
    String nobody = "/api/consents/%s/nobody/".formatted(mass);
    refusing.notThere(() -> post(nobody + "grant", Map.of()));
    refusing.notThere(() -> post(nobody + "refuse", Map.of()));
    refusing.notThere(() -> post("/api/consents/none/nobody/grant", Map.of()));
    refusing.unfit(() -> Sending.get("/api/consents"), "from", "to");
  }

  private static Map<String, Object> consent() {
    return Asking.only(Asking.list("/api/consents?from=%s&to=%s".formatted(DAY, DAY)));
  }

  private static String address(Map<String, Object> one) {
    return "/consents/%s/%s".formatted(one.get("mass"), one.get("slug"));
  }

  private static String api(Map<String, Object> one) {
    return "/api" + address(one);
  }

  private static void lendOnAskingAlone(String code) {
    Map<String, Object> piece =
        RestAssured.get("/api/pieces/" + code)
            .then()
            .statusCode(200)
            .extract()
            .jsonPath()
            .getMap("");
    put("/api/pieces/" + code, Sending.with(piece, "ownerPolicy", "asking")).then().statusCode(200);
  }
}
