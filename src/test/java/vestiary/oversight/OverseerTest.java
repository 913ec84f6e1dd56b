package vestiary.oversight;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.users.LettingIn.browser;
import static vestiary.users.LettingIn.program;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Browsing;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;
import vestiary.users.LettingIn.Somebody;

/** Somebody of the diocese looks into a cluster that lets him, and changes nothing there. */
@QuarkusTest
class OverseerTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject LettingIn letting;
  @Inject Granting granting;

  private UUID home;
  private Somebody overseer;

  @BeforeEach
  void an_overseer_of_another_cluster() {
    scenario.load();
    home = scenario.openAnother();
    program(letting.tokenIn(home, "honor", Role.ADMINISTRATOR))
        .body(Map.of("name", "Diocese of Quellmouth"))
        .put("/api/settings")
        .then()
        .statusCode(200);
    overseer = letting.in(home, "aldous", Role.READER);
  }

  @Test
  void he_is_let_in_by_his_code_looks_and_comes_back() {
    String code = code();
    Browsing.send("/clusters/overseers", Map.of("code", List.of(code)))
        .leadsTo("/clusters?done=in");
    Browsing.page("/clusters").says("aldous", "Take the leave back");

    Response pressed = look();

    pressed.then().statusCode(303).header("Location", endsWith("/week"));
    String look = pressed.getCookie("vestiary-look");
    there(look)
        .get("/week/2026-12-07")
        .then()
        .statusCode(200)
        .body(containsString("You are looking into <b>Wenlow Valley</b> as overseer"));
    there(look).get("/vestments/HT-W1-C").then().statusCode(200);
    browser(overseer.session()).get("/vestments/HT-W1-C").then().statusCode(404);
    there(look)
        .formParam("form-token", token())
        .post("/clusters/back")
        .then()
        .statusCode(303)
        .cookie("vestiary-look", equalTo(""));
  }

  @Test
  void there_he_reads_and_changes_nothing() {
    granting.letIn(scenario.ours(), home, overseer.id());
    String look = look().getCookie("vestiary-look");

    there(look).get("/history").then().statusCode(200);
    there(look).get("/users").then().statusCode(403);
    there(look).get("/account").then().statusCode(403);
    for (String address :
        List.of("/masses", "/vestments", "/vestments/HT-W1-C/removal", "/settings", "/users")) {
      refusing
          .unchanged(() -> there(look).formParam("form-token", token()).post(address))
          .then()
          .statusCode(403);
    }
    there(look).get("/lendings/new").then().statusCode(200);
  }

  @Test
  void a_program_of_his_says_where_it_looks() {
    granting.letIn(scenario.ours(), home, overseer.id());

    inWenlow().get("/api/churches").then().statusCode(200).body("size()", equalTo(6));
    program(overseer.token()).get("/api/churches").then().body("size()", equalTo(0));
    refusing.refused(
        403,
        "not-allowed",
        () -> inWenlow().body(Map.of("slug", "x", "name", "X")).post("/api/churches"));
  }

  @Test
  void whom_a_cluster_does_not_let_in_finds_no_such_cluster() {
    // That a token was used is noted the first time.
    program(overseer.token()).get("/api/churches").then().statusCode(200);
    refusing.refused(404, "not-there", () -> inWenlow().get("/api/churches"));
    refusing.refused(
        404,
        "not-there",
        () ->
            program(overseer.token())
                .header("Vestiary-Cluster", "no-such-word")
                .get("/api/churches"));
    // A cookie that was made up leads nowhere but home.
    there(scenario.ours().toString())
        .get("/vestments")
        .then()
        .statusCode(200)
        .body(not(containsString("Wenlow")));
  }

  @Test
  void with_the_leave_taken_back_he_is_out_at_once() {
    UUID leave = granting.letIn(scenario.ours(), home, overseer.id());
    String look = look().getCookie("vestiary-look");
    inWenlow().get("/api/churches").then().statusCode(200);

    Browsing.press("/clusters/overseers/%s/end".formatted(leave)).leadsTo("/clusters?done=out");

    inWenlow().get("/api/churches").then().statusCode(404);
    there(look).get("/week").then().body(not(containsString("Wenlow Valley")));
    look(leave.toString()).then().statusCode(404);
  }

  @Test
  void signing_out_ends_the_session_of_his_own_cluster_wherever_he_looks() {
    granting.letIn(scenario.ours(), home, overseer.id());
    String look = look().getCookie("vestiary-look");

    there(look).formParam("form-token", token()).post("/sign-out").then().statusCode(303);

    there(look).get("/week").then().statusCode(303).header("Location", containsString("/sign-in"));
  }

  @Test
  void a_code_that_is_nobodys_lets_nobody_in() {
    refusing.unfit(() -> Sending.post("/api/clusters/overseers", Map.of("code", "x")), "code");
    String nobody = new OverseerCode(home, UUID.randomUUID()).text();
    refusing.unfit(() -> Sending.post("/api/clusters/overseers", Map.of("code", nobody)), "code");
    UUID own = letting.user("piers", Role.READER);
    String ours = new OverseerCode(scenario.ours(), own).text();
    refusing.unfit(() -> Sending.post("/api/clusters/overseers", Map.of("code", ours)), "code");
    assertEquals(List.of(), Sending.get("/api/clusters/overseers").jsonPath().getList(""));
  }

  private String code() {
    String page = browser(overseer.session()).get("/clusters").asString();
    return page.replaceAll("(?s).*<p class=\"verbatim\">([A-Za-z0-9_-]{43})</p>.*", "$1");
  }

  private Response look() {
    String page = browser(overseer.session()).get("/clusters").asString();
    return look(page.replaceAll("(?s).*action=\"/clusters/([0-9a-f-]{36})/look\".*", "$1"));
  }

  private Response look(String leave) {
    return browser(overseer.session())
        .formParam("form-token", token())
        .post("/clusters/%s/look".formatted(leave));
  }

  private String token() {
    return LettingIn.formToken(browser(overseer.session()).get("/sign-in").asString());
  }

  private RequestSpecification there(String look) {
    return browser(overseer.session()).cookie("vestiary-look", look);
  }

  private RequestSpecification inWenlow() {
    return program(overseer.token()).header("Vestiary-Cluster", "wenlow-valley");
  }
}
