package vestiary.serving;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Page;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/**
 * Lay ministers are named at a Mass: whoever may look reads who serves, a child by first name and
 * initial, and nobody who serves is on the paper for the church door.
 */
@QuarkusTest
class ServingTest {

  private static final String DAY = "2026-12-10";

  @Inject Scenario scenario;
  @Inject LettingIn letting;

  private String mass;

  @BeforeEach
  void a_mass_of_holy_trinity() {
    scenario.load();
    mass = enter("ht", DAY + "T15:00");
  }

  @Test
  void a_program_says_who_serves_and_reads_it_by_role_and_name() {
    serve(mass, named("odo-larkspire", ""), named("tamsin-q", "server"));

    assertEquals(
        List.of(
            Map.of("person", "tamsin-q", "role", "server", "name", "Tamsin Q."),
            Map.of("person", "odo-larkspire", "role", "reader", "name", "Odo Larkspire")),
        serving(mass));

    serve(mass, named("Odo Larkspire", "communion-minister"));

    assertEquals(
        List.of(
            Map.of(
                "person", "odo-larkspire", "role", "communion-minister", "name", "Odo Larkspire")),
        serving(mass));
  }

  @Test
  void what_cannot_be_is_told_and_changes_nothing() {
    serve(mass, named("tamsin-q", "server"));

    for (List<Map<String, String>> wrong :
        List.of(
            List.of(named("nobody-here", "server")),
            List.of(named("odo-larkspire", "organist")),
            List.of(named("", "server")),
            List.of(named("ambrose-tarnwick", "server")),
            List.of(named("odo-larkspire", "reader"), named("odo-larkspire", "server")))) {
      Response refused = Sending.put(address(mass), Map.of("serving", wrong));
      assertEquals(400, refused.statusCode(), wrong + ": " + refused.asString());
      assertTrue(refused.contentType().startsWith("application/problem+json"));
    }
    Sending.put(address(mass), Map.of()).then().statusCode(400);
    Sending.delete("/api/masses/" + mass).then().statusCode(204);
    Sending.put(address(mass), Map.of("serving", List.of(named("odo-larkspire", ""))))
        .then()
        .statusCode(404);

    assertEquals(1, serving(mass).size());
  }

  @Test
  void one_press_names_somebody_another_takes_off_and_a_third_puts_back() {
    String page = "/masses/" + mass + "/serving";

    Page named =
        follow(Browsing.send(page, Map.of("person", List.of("tamsin-q"), "role", List.of(""))));

    named.says("Tamsin Q. is named.", "Server Tamsin Q.", "Albs are counted for one server.");
    Browsing.page("/day/" + DAY).says("Server: Tamsin Q.").links(page);
    Browsing.page("/masses/" + mass).says("Server: Tamsin Q.").links(page);

    Page off = follow(Browsing.press(page + "/tamsin-q/removal"));
    off.says("Tamsin Q. is taken off.", "Nobody is named yet.");
    assertEquals(List.of(), serving(mass));

    Browsing.send(page, Map.of("person", List.of("tamsin-q"), "role", List.of("server")));
    assertEquals(1, serving(mass).size());
    Browsing.send(page, Map.of("person", List.of(""))).is(400).says("person is missing");
  }

  @Test
  void whoever_has_no_task_at_mass_is_offered_as_what_she_is_and_serves_only_as_is_said() {
    String page = "/masses/" + mass + "/serving";

    Page offered = Browsing.page(page);
    assertTrue(offered.words().contains("Maren Dovecote, administrator"), offered.words());
    Browsing.send(page, Map.of("person", List.of("maren-dovecote"), "role", List.of("")))
        .is(400)
        .says("say as what Maren Dovecote serves");
    assertEquals(List.of(), serving(mass));

    Browsing.send(page, Map.of("person", List.of("maren-dovecote"), "role", List.of("reader")));
    assertEquals("reader", serving(mass).get(0).get("role"));
  }

  @Test
  void whoever_is_away_or_named_elsewhere_is_offered_last_and_why_is_not_told() {
    Sending.post(
            "/api/people/tamsin-q/absences", Map.of("from", DAY, "to", DAY, "reason", "Measles"))
        .then()
        .statusCode(201);
    serve(enter("sa", DAY + "T15:15"), named("odo-larkspire", "reader"));

    String words = Browsing.page("/masses/" + mass + "/serving").keepsSilentOn("Measles").words();

    int elsewhere = words.indexOf("Odo Larkspire, reader; named at 15:15 at Saint Anne");
    int away = words.indexOf("Tamsin Q., server; not available");
    assertTrue(words.indexOf("Nell Marchpane, sacristan") < elsewhere, words);
    assertTrue(elsewhere > 0 && elsewhere < away, words);
  }

  @Test
  void named_servers_count_for_albs_at_least_and_named_readers_do_not() {
    serve(mass, named("tamsin-q", "server"), named("nell-marchpane", "server"));

    assertEquals(List.of(ministers(2)), change().get("ministers"));

    Asking.change(change(), Map.of("ministers", List.of(Map.of("kind", "server", "count", 4))));
    serve(mass, named("tamsin-q", "server"), named("odo-larkspire", "reader"));

    assertEquals(List.of(ministers(4)), change().get("ministers"));
  }

  @Test
  void one_who_serves_and_is_away_is_to_be_decided_on_and_nothing_must_be() {
    serve(mass, named("tamsin-q", "server"));
    Sending.post("/api/people/tamsin-q/absences", Map.of("from", DAY, "to", DAY))
        .then()
        .statusCode(201);

    Map<String, Object> clash = clash("minister");

    assertEquals("decide", clash.get("severity"));
    assertEquals(
        "Holy Trinity, Thursday 10 December, 15:00: Tamsin Q. is not available. Away on 10 December"
            + " 2026. Name somebody else, or do without.",
        clash.get("sentence"));
    Browsing.page("/day/" + DAY).links("/masses/" + mass + "/serving");
  }

  @Test
  void one_who_serves_at_two_masses_that_overlap_is_told_once_and_one_after_the_other_is_fine() {
    String second = enter("sa", DAY + "T15:20");
    serve(mass, named("odo-larkspire", "reader"));
    serve(second, named("odo-larkspire", "server"));
    serve(enter("sa", DAY + "T16:30"), named("odo-larkspire", "reader"));

    Map<String, Object> clash = clash("double-booked");

    assertEquals("decide", clash.get("severity"));
    assertEquals(
        "Holy Trinity, Thursday 10 December, 15:00: Odo Larkspire is named here and at 15:20 at"
            + " Saint Anne, and the two overlap. Name somebody else at one of the two, or do"
            + " without.",
        clash.get("sentence"));
  }

  @Test
  void the_review_names_them_and_tells_what_changed_since_it_was_signed() {
    serve(mass, named("tamsin-q", "server"), named("odo-larkspire", "reader"));
    Browsing.page("/review/2026-12-07").says("server: Tamsin Q.; reader: Odo Larkspire");
    Sending.post("/api/coverage/2026-W50/sign", Map.of()).then().statusCode(201);

    serve(mass, named("odo-larkspire", "reader"));

    Browsing.page("/review/2026-12-07")
        .says("Holy Trinity, 15:00: ", "those who serve are others")
        .keepsSilentOn("Tamsin");
  }

  @Test
  void the_set_out_sheet_names_them_and_asks_nobody_how_tall_a_child_is() {
    serve(mass, named("tamsin-q", "server"), named("odo-larkspire", "reader"));

    Browsing.page("/masses/" + mass + "/set-out")
        .says("Server: Tamsin Q.; reader: Odo Larkspire.", "One server")
        .keepsSilentOn("How tall is Tamsin");
  }

  @Test
  void their_own_page_and_calendar_have_their_services_and_no_other_calendar_has_their_names() {
    serve(mass, named("odo-larkspire", "reader"), named("tamsin-q", "server"));
    String session = letting.session(userWho("odo-larkspire"));

    Page.of(LettingIn.browser(session).get("/mine").asString())
        .says("Thursday 10 December, 15:00", "You read");
    String key = LettingIn.feedKey(LettingIn.feedPage(session));
    String own = LettingIn.nobody().accept("*/*").get("/feeds/mine.ics?key=" + key).asString();
    assertTrue(own.contains(mass) && own.contains("You read."), own);
    String ofChurch =
        LettingIn.nobody().accept("*/*").get("/feeds/masses.ics?church=ht&key=" + key).asString();
    assertTrue(ofChurch.contains(mass), ofChurch);
    assertFalse(ofChurch.contains("Tamsin") || ofChurch.contains("Larkspire"), ofChurch);

    serve(mass, named("odo-larkspire", "communion-minister"));

    String anew = LettingIn.nobody().accept("*/*").get("/feeds/mine.ics?key=" + key).asString();
    assertTrue(anew.contains("You help to give Communion."), anew);
    assertTrue(sequence(anew) > sequence(own), anew);
  }

  @Test
  void the_mass_times_for_the_people_name_nobody_who_serves() {
    serve(mass, named("odo-larkspire", "reader"), named("tamsin-q", "server"));
    Browsing.press("/times/publish").leadsTo("/times?done=published");

    for (String page : List.of("/times", "/times/public")) {
      String shown = Sending.get(page).asString();
      assertFalse(shown.contains("Tamsin") || shown.contains("Larkspire"), page);
    }
  }

  @Test
  void a_mass_that_is_moved_keeps_them_and_one_that_is_put_back_has_them_again() {
    serve(mass, named("tamsin-q", "server"));

    Asking.change(change(), Map.of("start", DAY + "T16:00"));
    assertEquals(1, serving(mass).size());
    Sending.delete("/api/masses/" + mass).then().statusCode(204);
    Browsing.page("/masses/" + mass + "/serving").says("This Mass is cancelled.", "Tamsin Q.");
    Browsing.press("/masses/" + mass + "/restoration");

    assertEquals(1, serving(mass).size());
    Browsing.page("/day/" + DAY).says("Server: Tamsin Q.");
  }

  @Test
  void a_regular_mass_with_names_is_left_alone_by_its_pattern() {
    String regular = Asking.mass("ht", "2026-12-16T12:10").get("id").toString();

    serve(regular, named("odo-larkspire", "reader"));

    String list = Sending.get("/api/exports/masses.csv").asString();
    assertTrue(list.contains("odo-larkspire:reader"), list);
  }

  @Test
  void whoever_is_removed_for_good_serves_nowhere_any_more() {
    serve(mass, named("odo-larkspire", "reader"), named("tamsin-q", "server"));

    Sending.post("/api/people/odo-larkspire/erasure", Map.of()).then().statusCode(204);

    assertEquals(
        List.of("tamsin-q"), serving(mass).stream().map(one -> one.get("person")).toList());
  }

  @Test
  void a_sacristan_names_people_in_her_own_churches_alone_and_a_reader_nowhere() {
    String other = letting.token(letting.user("elsewhere", Role.SACRISTAN, "sa"));
    String here = letting.token(letting.user("here", Role.SACRISTAN, "ht"));
    String reader = letting.token(letting.user("reads", Role.READER));

    for (String refused : List.of(other, reader)) {
      put(refused).then().statusCode(403);
      Page.of(page(refused)).keepsSilentOn("Name one more");
    }
    assertEquals(List.of(), serving(mass));
    put(here).then().statusCode(200);
    Page.of(page(here)).says("Name one more", "Tamsin Q.");
    Page.of(page(reader)).says("Tamsin Q.");
  }

  private String page(String token) {
    return LettingIn.program(token)
        .accept("text/html")
        .get("/masses/" + mass + "/serving")
        .asString();
  }

  private Response put(String token) {
    return LettingIn.program(token)
        .contentType("application/json")
        .body(Map.of("serving", List.of(named("tamsin-q", "server"))))
        .put(address(mass));
  }

  private int sequence(String calendar) {
    return Integer.parseInt(
        calendar.replaceAll("(?s).*UID:" + mass + ".*?SEQUENCE:(\\d+).*", "$1"));
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

  private Map<String, Object> change() {
    return Sending.get("/api/masses/" + mass).jsonPath().getMap("");
  }

  private static Map<String, Object> ministers(int count) {
    return Map.of("kind", "server", "count", count, "sizes", List.of());
  }

  private static Map<String, Object> clash(String kind) {
    return Asking.only(
        Asking.clashes(DAY, DAY).stream().filter(one -> one.get("kind").equals(kind)).toList());
  }

  private static String enter(String church, String start) {
    return Sending.mass(church, start).get("id").toString();
  }

  @SafeVarargs
  private static void serve(String mass, Map<String, String>... people) {
    Sending.put(address(mass), Map.of("serving", List.of(people))).then().statusCode(200);
  }

  private static List<Map<String, Object>> serving(String mass) {
    return Asking.list(address(mass));
  }

  private static String address(String mass) {
    return "/api/masses/%s/serving".formatted(mass);
  }

  private static Map<String, String> named(String person, String role) {
    return Map.of("person", person, "role", role);
  }

  private static Page follow(Page sent) {
    return Browsing.page(sent.wayOn());
  }
}
