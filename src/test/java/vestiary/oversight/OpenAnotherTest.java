package vestiary.oversight;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.users.LettingIn.browser;
import static vestiary.users.LettingIn.program;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Browsing;
import vestiary.scenario.Credentials;
import vestiary.scenario.Page;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/** Another cluster on the same server, opened and come into. */
@QuarkusTest
class OpenAnotherTest {

  private static final String PASSWORD = "harbour lantern seventy otters";

  private static final Map<String, String> ASHMERE =
      Map.of(
          "name", "Ashmere Coast",
          "word", "ashmere-coast",
          "calendar", "us",
          "timeZone", "America/Chicago",
          "administrator", "Honor Sandilow");

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject LettingIn letting;

  @BeforeEach
  void a_real_cluster() {
    scenario.load();
  }

  @Test
  void its_administrator_comes_in_by_the_link_and_sees_nothing_of_the_first() {
    String link = opened();
    Response welcomed = chosen(link);

    String session = welcomed.getCookie("vestiary-session");
    String home = welcomed.getCookie("vestiary-home");
    browser(session).get("/week").then().statusCode(200).body(containsString("Ashmere Coast"));
    browser(session).get("/vestments/HT-W1-C").then().statusCode(404);
    browser(session).get("/churches/ht").then().statusCode(404);
    browser(session).get("/clusters/new").then().statusCode(200);
    browser(session)
        .formParams(ASHMERE)
        .formParam("form-token", LettingIn.formToken(browser(session).get("/clusters").asString()))
        .post("/clusters")
        .then()
        .statusCode(403)
        .body(containsString("Clusters are opened from the first cluster"));

    // The device remembers where its user belongs, though the session is over.
    signIn(nobody().cookie("vestiary-home", home), "/sign-in").then().statusCode(303);
    signIn(nobody(), "/sign-in?cluster=ashmere-coast").then().statusCode(303);
    signIn(nobody(), "/sign-in?cluster=ASHMERE-COAST").then().statusCode(303);
    signIn(nobody(), "/sign-in").then().statusCode(400);
  }

  @Test
  void a_word_that_is_no_clusters_is_answered_like_a_wrong_password() {
    letting.in(scenario.openAnother(), "honor", Role.READER);
    chosen(opened());

    String known = nobody().get("/sign-in?cluster=ashmere-coast").asString();
    String unknown = nobody().get("/sign-in?cluster=nowhere-coast").asString();

    assertEquals(known.replace("ashmere", "nowhere"), unknown);
    for (String word : List.of("nowhere-coast", "ashmere-coast")) {
      nobody()
          .formParams(Map.of("login", "administrator", "password", "not that one"))
          .post("/sign-in?cluster=" + word)
          .then()
          .statusCode(400)
          .body(containsString("The name or the password is wrong."));
    }
    // Nor does it open the first cluster to whoever belongs there.
    signIn(nobody(), "/sign-in?cluster=nowhere-coast").then().statusCode(400);
  }

  @Test
  void whoever_is_signed_in_elsewhere_can_still_use_a_link() {
    String ours = letting.in(scenario.ours(), "ysolde", Role.SACRISTAN).session();

    browser(ours).get(opened()).then().statusCode(200).body(containsString("administrator"));
  }

  @Test
  void the_program_way_opens_it_too_and_answers_the_link_once() {
    Sending.post("/api/clusters", ASHMERE)
        .then()
        .statusCode(201)
        .body("word", equalTo("ashmere-coast"))
        .body("link", containsString("/welcome/"));
    Sending.get("/api/clusters").then().body("name", equalTo(List.of("Wenlow Valley")));
  }

  @Test
  void what_is_missing_or_taken_is_told_field_by_field_and_opens_nothing() {
    opened();
    refusing.unfit(
        () -> Sending.post("/api/clusters", Map.of()),
        "name",
        "word",
        "calendar",
        "timeZone",
        "administrator");
    refusing.unfit(() -> Sending.post("/api/clusters", with("word", "Ashmere-Coast")), "word");
    refusing.unfit(() -> Sending.post("/api/clusters", with("word", "not one")), "word");
    refusing.unfit(
        () -> Sending.post("/api/clusters", with("word", UUID.randomUUID().toString())), "word");
    refusing.unfit(() -> Sending.post("/api/clusters", fresh("calendar", "mars")), "calendar");
    refusing.unfit(() -> Sending.post("/api/clusters", fresh("timeZone", "Sea")), "timeZone");
    Browsing.send("/clusters", form(fresh("calendar", "mars"))).is(400).says("below is to be put");
  }

  @Test
  void a_cluster_gives_itself_another_word() {
    opened();

    Browsing.send("/clusters/word", Map.of("word", List.of("wenlow")))
        .leadsTo("/clusters?done=word");
    Browsing.page("/clusters").says("/sign-in?cluster=wenlow");
    Browsing.send("/clusters/word", Map.of("word", List.of("ashmere-coast")))
        .is(400)
        .faults("word", "\"ashmere-coast\" belongs to another cluster of this server.");
  }

  @Test
  void whoever_opens_it_may_look_into_it_until_that_is_taken_back() {
    LettingIn.Somebody maren = letting.in(scenario.ours(), "maren", Role.ADMINISTRATOR);
    program(maren.token()).body(ASHMERE).post("/api/clusters").then().statusCode(201);

    program(maren.token())
        .get("/api/clusters")
        .then()
        .body("name", equalTo(List.of("Wenlow Valley", "Ashmere Coast")));
    program(maren.token())
        .header("Vestiary-Cluster", "ashmere-coast")
        .get("/api/settings")
        .then()
        .statusCode(200)
        .body("name", equalTo("Ashmere Coast"));
  }

  private String opened() {
    Page page = Browsing.send("/clusters", form(ASHMERE)).is(200).says("Ashmere Coast is open");
    return page.words().replaceAll(".*(/welcome/[A-Za-z0-9_-]+).*", "$1");
  }

  private static Response chosen(String link) {
    Response welcomed =
        nobody().formParams(Map.of("password", PASSWORD, "again", PASSWORD)).post(link);
    welcomed.then().statusCode(303).cookie("vestiary-home", notNullValue());
    nobody().get(link).then().statusCode(404).body(not(containsString("Ashmere")));
    return welcomed;
  }

  private static Response signIn(RequestSpecification request, String address) {
    return request.formParams(Map.of("login", "administrator", "password", PASSWORD)).post(address);
  }

  private static RequestSpecification nobody() {
    return RestAssured.given()
        .header(Credentials.nobody())
        .redirects()
        .follow(false)
        .accept("text/html,application/xhtml+xml,*/*;q=0.8");
  }

  private static Map<String, String> with(String field, String value) {
    Map<String, String> changed = new HashMap<>(ASHMERE);
    changed.put(field, value);
    return changed;
  }

  private static Map<String, String> fresh(String field, String value) {
    Map<String, String> changed = with("word", "another-coast");
    changed.put(field, value);
    return changed;
  }

  private static Map<String, List<String>> form(Map<String, String> body) {
    Map<String, List<String>> form = new HashMap<>();
    body.forEach((field, value) -> form.put(field, List.of(value)));
    return form;
  }
}
