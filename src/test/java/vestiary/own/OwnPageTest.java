package vestiary.own;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Page;
import vestiary.scenario.Planning;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/** Whoever is named as somebody of the schedule sees what concerns him, and nothing of others. */
@QuarkusTest
class OwnPageTest {

  @Inject Scenario scenario;
  @Inject LettingIn letting;

  @BeforeEach
  void a_real_cluster() {
    scenario.load();
  }

  @Test
  void a_priest_sees_the_masses_that_he_celebrates_with_what_is_set_out_for_him() {
    Planning.applied("2026-11-30", "2026-12-13");
    String token = userWho("cosmas-ilverton");
    List<Map<String, Object>> his =
        Asking.list("/api/masses?from=2026-11-30&to=2026-12-13").stream()
            .filter(m -> "cosmas-ilverton".equals(m.get("celebrant")))
            .toList();
    assertTrue(his.size() > 3, "found only " + his.size());

    String page = mine(token);

    for (Map<String, Object> mass : his) {
      assertTrue(page.contains("/masses/" + mass.get("id") + "\""), mass.toString());
    }
    long foreign =
        Asking.list("/api/masses?from=2026-11-30&to=2026-12-13").stream()
            .filter(m -> "fintan-oakhallow".equals(m.get("celebrant")))
            .filter(m -> page.contains("/masses/" + m.get("id") + "\""))
            .filter(m -> !m.toString().contains("ilverton"))
            .count();
    assertTrue(foreign == 0, "Masses of others");
    assertTrue(page.contains("You celebrate"), page);
    assertTrue(page.contains(": of Sunday, ") && !page.contains(": Of Sunday"), page);
    assertTrue(page.contains("Set out for you: "), page);
  }

  @Test
  void a_journey_that_he_is_asked_for_stands_there_until_he_says_no() {
    Planning.applied("2026-12-07", "2026-12-13");
    String token = userWho("silas-umberley");
    Object trip = Asking.list("/api/movements?from=2026-12-07&to=2026-12-13").get(0).get("id");
    assertTrue(!mine(token).contains("/movements/" + trip));

    Sending.post("/api/movements/%s/ask".formatted(trip), Map.of("carrier", "Silas Umberley"))
        .then()
        .statusCode(200);
    assertTrue(mine(token).contains("/movements/" + trip));

    Sending.post("/api/movements/%s/decline".formatted(trip), Map.of());
    assertTrue(!mine(token).contains("/movements/" + trip));
  }

  @Test
  void whoever_is_nobody_in_the_schedule_is_told_who_can_change_that() {
    String token = LettingIn.program(admin()).get("/mine").asString();

    assertTrue(token.contains("Nobody of the schedule is named for you yet."), token);
  }

  @Test
  void the_page_of_a_user_names_whom_they_are() {
    String id = entered("piers-underlarch");
    Page page = Browsing.page("/users/" + id);
    assertTrue(page.form("/users/" + id).get("person").equals(List.of("piers-underlarch")));

    Browsing.send("/users/" + id, page.form("/users/" + id, Map.of("person", "")))
        .leadsTo("/users/%s?done=saved".formatted(id));

    assertTrue(Sending.get("/api/users/" + id).then().extract().path("person") == null);
  }

  private String admin() {
    return letting.token(letting.user("nobody-of-the-schedule", Role.PASTOR));
  }

  private String userWho(String person) {
    return letting.token(UUID.fromString(entered(person)));
  }

  private static String entered(String person) {
    Response entered =
        Sending.post(
            "/api/users",
            Map.of("login", person, "name", person, "role", "minister", "person", person));
    entered.then().statusCode(201);
    return entered.path("id");
  }

  @Test
  void what_he_wears_is_told_in_his_language() {
    Response answer =
        LettingIn.program(userWho("cosmas-ilverton"))
            .accept("text/html")
            .header("Accept-Language", "es")
            .get("/mine");

    Page.of(answer.asString()).says("Casulla y estola.");
  }

  @Test
  void over_a_mass_at_which_he_is_away_he_is_told_so_and_that_another_is_to_be_named() {
    Planning.applied("2026-11-30", "2026-12-13");
    String token = userWho("cosmas-ilverton");
    String mass = id("sa", "2026-12-06T10:45");
    assertTrue(line(token, mass).contains("You celebrate: "), line(token, mass));
    assertTrue(line(token, mass).contains("Set out for you: "), line(token, mass));

    away("cosmas-ilverton", "2026-12-06");

    String line = line(token, mass);
    assertTrue(
        line.contains("You are away then; another is to be named to celebrate: Second Sunday"),
        line);
    assertTrue(line.contains("#mark-must"), line);
    assertFalse(line.contains("You celebrate") || line.contains("Set out for you"), line);
    Page.of(mine(token)).says("; named while away: ", "You celebrate: ");
    Page.of(
            LettingIn.program(token)
                .accept("text/html")
                .header("Accept-Language", "es")
                .get("/mine")
                .asString())
        .says("Usted está ausente entonces; hay que nombrar a otro que celebre: ");
  }

  @Test
  void another_is_to_be_named_to_lead_what_is_no_mass() {
    String mass =
        Sending.mass(
                Map.of(
                    "church", "sa",
                    "start", "2026-12-03T15:00",
                    "mass", "benediction",
                    "celebrant", "cosmas-ilverton"))
            .get("id")
            .toString();
    String token = userWho("cosmas-ilverton");
    assertTrue(line(token, mass).contains("You lead: "), line(token, mass));

    away("cosmas-ilverton", "2026-12-03");

    String line = line(token, mass);
    assertTrue(line.contains("You are away then; another is to be named to lead: "), line);
  }

  @Test
  void who_serves_and_is_away_is_told_that_another_may_be_named() {
    String mass = id("ht", "2026-12-05T10:30");
    Sending.put(
            "/api/masses/%s/serving".formatted(mass),
            Map.of("serving", List.of(Map.of("person", "odo-larkspire"))))
        .then()
        .statusCode(200);
    String token = userWho("odo-larkspire");
    assertTrue(line(token, mass).contains("You read: "), line(token, mass));

    away("odo-larkspire", "2026-12-05");

    String line = line(token, mass);
    assertTrue(line.contains("You are away then; another may be named: "), line);
    assertTrue(line.contains("#mark-decide"), line);
    assertFalse(line.contains("You read"), line);
    Page.of(mine(token)).says("nothing is asked of you; named while away: 1.");
  }

  private static String id(String church, String start) {
    return Asking.mass(church, start).get("id").toString();
  }

  private static void away(String person, String date) {
    Sending.post("/api/people/%s/absences".formatted(person), Map.of("from", date, "to", date))
        .then()
        .statusCode(201);
  }

  /** What the page says of one Mass. */
  private static String line(String token, String mass) {
    return Stream.of(mine(token).split("<li>"))
        .filter(line -> line.contains("/masses/" + mass + "\""))
        .findFirst()
        .orElseThrow()
        .split("</li>")[0]
        .replaceAll("</?b>", "");
  }

  private static String mine(String token) {
    Response answer = LettingIn.program(token).accept("text/html").get("/mine");
    answer.then().statusCode(200);
    return answer.asString();
  }
}
