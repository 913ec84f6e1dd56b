package vestiary.absence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.retention.Nights;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Page;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/** A priest is away: his Masses say so, and nobody but those who may know is told why. */
@QuarkusTest
class AbsenceTest {

  private static final String PAGE = "/people/fintan-oakhallow/absences";
  private static final String REASON = "Knee operation at the General";

  @Inject Scenario scenario;
  @Inject LettingIn letting;
  @Inject Nights nights;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void entering_it_answers_with_the_masses_it_touches_and_leads_to_each() {
    Page kept = entered(Map.of("from", "2026-12-07", "to", "2026-12-13", "reason", REASON));

    kept.says(
        "Kept: Father Fintan Oakhallow is not available from 7 to 13 December 2026.",
        "Father Fintan Oakhallow is down for three Masses in that time.",
        "Tuesday 8 December, 18:30, Saint Anne: celebrates",
        "Saturday 12 December, 14:00, Holy Trinity: celebrates",
        "Sunday 13 December, 17:30, Holy Trinity: celebrates");
    kept.links("/masses/" + Asking.mass("sa", "2026-12-08T18:30").get("id"));
  }

  @Test
  void a_mass_whose_celebrant_is_away_must_be_mended_until_somebody_else_is_named() {
    away("fintan-oakhallow", "2026-12-12", "2026-12-12");

    Map<String, Object> clash = Asking.only(clashes("2026-12-12", "no-celebrant"));

    assertEquals("must", clash.get("severity"));
    assertEquals(
        "Holy Trinity, Saturday 12 December, 14:00: Father Fintan Oakhallow is not available, and"
            + " nobody else is named. Away on 12 December 2026. Name somebody else, choose another"
            + " time, or cancel it.",
        clash.get("sentence"));
    Browsing.page("/day/2026-12-12").says("Father Fintan Oakhallow is not available");
    Browsing.page("/week/2026-12-07").says("Oakhallow away");
    Browsing.page("/clashes/2026-12-12/" + clash.get("id")).says("Must be mended");

    Asking.change(Asking.mass("ht", "2026-12-12T14:00"), Map.of("celebrant", "ambrose-tarnwick"));

    assertEquals(List.of(), clashes("2026-12-12", "no-celebrant"));
  }

  @Test
  void a_mass_without_one_who_assists_can_be_celebrated_and_somebody_decides_how() {
    Asking.change(
        Asking.mass("ht", "2026-12-13T10:30"),
        Map.of("named", List.of("lucan-pellmoor"), "deacons", 1));

    away("lucan-pellmoor", "2026-12-13T09:00", "2026-12-13T12:00");

    Map<String, Object> clash = Asking.only(clashes("2026-12-13", "minister"));
    assertEquals("decide", clash.get("severity"));
    assertTrue(
        clash.get("sentence").toString().contains("Deacon Lucan Pellmoor is not available"),
        clash.toString());
  }

  @Test
  void hours_touch_only_what_is_celebrated_in_them() {
    away("fintan-oakhallow", "2026-12-12T15:00", "2026-12-12T20:00");

    assertEquals(List.of(), clashes("2026-12-12", "no-celebrant"));

    away("fintan-oakhallow", "2026-12-12T14:59", "2026-12-12T15:00");

    assertEquals(1, clashes("2026-12-12", "no-celebrant").size());
  }

  @Test
  void that_nobody_is_left_is_kept_and_said_plainly_and_the_masses_say_so_too() {
    away("ambrose-tarnwick", "2026-12-09", "2026-12-11");
    away("cosmas-ilverton", "2026-12-08", "2026-12-10");
    Sending.mass("ht", "2026-12-10T20:00");

    Page kept = entered(Map.of("from", "2026-12-10", "to", "2026-12-12"));

    kept.says("Nobody of the cluster who could celebrate is left on 10 December 2026.");
    Browsing.page("/absences")
        .says("Nobody of the cluster who could celebrate is left on 10 December 2026.");
    List<String> sentences = sentences("2026-12-10");
    assertTrue(
        sentences.contains(
            "Holy Trinity, Thursday 10 December, 20:00: Nobody of the cluster who could celebrate"
                + " is available. All are away at that time, and nobody is named. Ask somebody from"
                + " outside, choose another time, or cancel it."),
        sentences.toString());
    assertTrue(
        sentences.stream()
            .anyMatch(s -> s.contains("Nobody else of the cluster who could celebrate")),
        sentences.toString());
  }

  @Test
  void why_is_told_to_administrators_and_pastors_and_to_nobody_else() {
    entered(Map.of("from", "2026-12-07", "to", "2026-12-13", "reason", REASON));
    List<String> told = new ArrayList<>();
    for (Role role : Role.values()) {
      String token = letting.token(letting.user(role, "ht"));
      String list =
          LettingIn.program(token)
              .get("/api/absences?from=2026-12-01&to=2026-12-31")
              .then()
              .statusCode(200)
              .extract()
              .asString();
      assertTrue(list.contains("fintan-oakhallow"), role + ": " + list);
      boolean isTold = list.contains("\"reason\"");
      assertEquals(isTold, list.contains(REASON), role + ": " + list);
      for (String page :
          List.of(
              "/absences",
              PAGE,
              "/week/2026-12-07",
              "/day/2026-12-08",
              "/people/fintan-oakhallow",
              "/history/people/fintan-oakhallow",
              "/api/clashes?from=2026-12-07&to=2026-12-13")) {
        String shown = LettingIn.program(token).accept("*/*").get(page).asString();
        assertFalse(shown.contains("Knee") && !isTold, role + " reads why on " + page);
      }
      if (isTold) {
        told.add(role.id());
      }
    }

    assertEquals(List.of("administrator", "pastor"), told);
  }

  @Test
  void no_history_keeps_why_even_for_those_who_may_know() {
    entered(Map.of("from", "2026-12-07", "to", "2026-12-13", "reason", REASON));
    entered(Map.of("from", "2026-12-07", "to", "2026-12-13", "reason", "Another reason"));

    Browsing.page("/history/people/fintan-oakhallow")
        .says("Absence of Fintan Oakhallow entered", "7 December 2026", "another")
        .keepsSilentOn("Knee", "Another reason");
  }

  @Test
  void one_press_says_that_somebody_is_ill_from_now_on() {
    Page ill =
        follow(Browsing.send(PAGE + "/ill", Map.of("until", List.of("2026-12-06"))))
            .says(
                "Kept: Father Fintan Oakhallow is not available from 30 November 2026, 06:00 to 6"
                    + " December 2026.",
                "is down for two Masses in that time");

    String end = ill.action(PAGE + "/[^/]+/end");

    Browsing.press(end).leadsTo(PAGE + "?done=struck");
    assertEquals(List.of(), absences());
  }

  @Test
  void what_nobody_knows_the_end_of_lasts_until_further_notice_and_looks_eight_weeks_ahead() {
    follow(Browsing.send(PAGE + "/ill", Map.of("until", List.of(""))))
        .says("until further notice", "Looked at until 25 January 2027");
  }

  @Test
  void a_priest_enters_his_own_and_reads_no_reason_back() {
    String session = letting.session(userWho("fintan-oakhallow"));
    String token = LettingIn.formToken(LettingIn.browser(session).get("/mine/absences").asString());

    String way =
        LettingIn.browser(session)
            .formParams(
                Map.of(
                    "form-token",
                    token,
                    "from",
                    "2026-12-07",
                    "to",
                    "2026-12-08",
                    "reason",
                    REASON))
            .post("/mine/absences")
            .then()
            .statusCode(303)
            .extract()
            .header("Location");

    Page kept = Page.of(LettingIn.browser(session).get(way).asString());
    kept.says("is not available from 7 to 8 December 2026", "down for one Mass")
        .keepsSilentOn("Knee");
    Page.of(LettingIn.browser(session).get("/mine").asString())
        .says("You are away from 7 to 8 December 2026.");
    LettingIn.browser(session).get(PAGE).then().statusCode(403);
  }

  @Test
  void what_cannot_be_is_said_beside_its_field_and_changes_nothing() {
    Map<String, List<String>> typed =
        Map.of("from", List.of("2026-12-13"), "to", List.of("2026-12-07"));

    Browsing.send(PAGE, typed).is(400).keeps(typed, PAGE).says("It ends (2026-12-07) before");
    Browsing.send(PAGE, Map.of("to", List.of("2026-12-07"))).is(400).says("missing");
    Browsing.send(PAGE + "/ill", Map.of("until", List.of("2026-11-01"))).is(400);
    Sending.post("/api" + PAGE, Map.of("from", "soon")).then().statusCode(400);
    Sending.post("/api/people/nobody/absences", Map.of()).then().statusCode(404);

    assertEquals(List.of(), absences());
  }

  @Test
  void a_visitor_says_when_he_arrives_and_whether_he_brings_his_own() {
    String mass =
        Sending.mass(
                Map.of("church", "ht", "start", "2026-12-10T15:00", "celebrant", "silas-umberley"))
            .get("id")
            .toString();
    String page = "/people/silas-umberley/arrivals";

    Browsing.send(page + "/" + mass, Map.of("arrives", List.of("14:40"), "brings", List.of("own")))
        .leadsTo(page + "?done=saved");

    Browsing.page("/day/2026-12-10").says("Umberley comes at 14:40 and brings his own vestments");
    assertEquals(List.of(), clashes("2026-12-10", "minister"));

    Browsing.send(page + "/" + mass, Map.of("arrives", List.of("15:10"), "brings", List.of("own")));

    assertTrue(
        Asking.only(clashes("2026-12-10", "minister"))
            .get("sentence")
            .toString()
            .contains("Father Silas Umberley arrives only at 15:10"));
    Browsing.send(page + "/" + mass, Map.of("arrives", List.of("late"))).is(400).says("late");
    Browsing.send("/people/cosmas-ilverton/arrivals/" + mass, Map.of("arrives", List.of("14:00")))
        .is(422)
        .says("is not named at that Mass");
  }

  @Test
  void a_program_says_when_a_visitor_arrives_and_forgets_it_again() {
    String mass =
        Sending.mass(
                Map.of("church", "ht", "start", "2026-12-10T15:00", "celebrant", "silas-umberley"))
            .get("id")
            .toString();
    String address = "/api/people/silas-umberley/arrivals";

    Sending.put(address + "/" + mass, Map.of("arrives", "14:40", "brings", "own"))
        .then()
        .statusCode(204);

    Map<String, Object> said = Asking.only(Asking.list(address));
    assertEquals(mass, said.get("mass"));
    assertEquals("own", said.get("brings"));
    assertEquals("2026-12-10T14:40:00-06:00", said.get("arrives"));
    Sending.put(address + "/" + mass, Map.of("arrives", "late")).then().statusCode(400);
    Sending.put("/api/people/cosmas-ilverton/arrivals/" + mass, Map.of("arrives", "14:00"))
        .then()
        .statusCode(422);

    Sending.put(address + "/" + mass, Map.of()).then().statusCode(204);
    assertEquals(null, Asking.only(Asking.list(address)).get("arrives"));
  }

  @Test
  void it_goes_with_whoever_is_removed_for_good() {
    away("fintan-oakhallow", "2026-12-12", "2026-12-12");

    Sending.post("/api/people/fintan-oakhallow/erasure", Map.of()).then().statusCode(204);

    assertEquals(List.of(), absences());
  }

  @Test
  void what_is_long_over_goes_with_the_night() {
    away("fintan-oakhallow", "2026-08-01", "2026-08-30");
    away("fintan-oakhallow", "2026-08-01", "2026-09-10");

    nights.tidy();

    assertEquals(1, Asking.list("/api/absences?from=2026-08-01&to=2026-12-31").size());
  }

  private static UUID userWho(String person) {
    return UUID.fromString(
        Sending.post(
                "/api/users",
                Map.of("login", "him", "name", "Him", "role", "minister", "person", person))
            .then()
            .statusCode(201)
            .extract()
            .path("id"));
  }

  private Page entered(Map<String, String> typed) {
    Map<String, List<String>> form = new HashMap<>();
    typed.forEach((field, value) -> form.put(field, List.of(value)));
    return follow(Browsing.send(PAGE, form));
  }

  private static Page follow(Page sent) {
    return Browsing.page(sent.wayOn());
  }

  private static void away(String person, String from, String to) {
    Sending.post("/api/people/%s/absences".formatted(person), Map.of("from", from, "to", to))
        .then()
        .statusCode(201);
  }

  private static List<Map<String, Object>> absences() {
    return Asking.list("/api/absences?from=2026-11-01&to=2026-12-31");
  }

  private static List<Map<String, Object>> clashes(String date, String kind) {
    return Asking.clashes(date, date).stream().filter(c -> c.get("kind").equals(kind)).toList();
  }

  private static List<String> sentences(String date) {
    return clashes(date, "no-celebrant").stream().map(c -> c.get("sentence").toString()).toList();
  }
}
