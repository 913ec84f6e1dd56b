package vestiary.assigning;

import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.press;
import static vestiary.scenario.Browsing.send;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.put;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** Celebrants of the invented fortnight: proposed, advised on, named, undone. */
@QuarkusTest
class CelebrantsTest {

  private static final String SATURDAY = "2026-12-05";
  private static final String SUNDAY = "2026-12-06";
  private static final String PRIESTS = "findAll { it.role == 'priest' }.slug";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  private String funeral;
  private String morning;

  @BeforeEach
  void both_priests_concelebrate_at_the_confirmation() {
    scenario.load();
    company("ambrose-tarnwick", "cosmas-ilverton");
    funeral = mass("sj", SATURDAY + "T11:00");
    morning = mass("ht", SATURDAY + "T08:30");
  }

  @Test
  void the_only_priest_who_is_free_is_proposed_and_why_the_others_are_not() {
    Map<String, Object> line = line(funeral, SATURDAY);

    assertEquals("ambrose-tarnwick", line.get("now"));
    assertEquals("fintan-oakhallow", line.get("celebrant"));
    String why = line.get("why").toString();
    assertTrue(why.contains("Nobody else can take it."), why);
    for (String surname : List.of("Tarnwick", "Ilverton")) {
      assertTrue(
          why.contains(
              surname
                  + " is at Holy Trinity until 12:30 (confirmation at 10:30), 18 minutes away: he could begin here at 13:03 at the earliest."),
          why);
    }
  }

  @Test
  void the_proposal_tells_whoever_gets_a_celebrant_from_whoever_gets_another() {
    Sending.mass("sm", "2026-12-04T15:00");
    Sending.mass("sm", "2026-12-05T15:00");

    page("/celebrants/proposal?from=2026-12-04&to=" + SATURDAY)
        .says("One gets a celebrant. One gets another celebrant. For two there is nobody.");
  }

  @Test
  void a_celebrant_is_named_and_whoever_was_asked_for_comes_back_once_he_is_free() {
    String noon = mass("ht", "2026-12-02T12:10");

    String id = assign(noon, true);

    assertEquals("fintan-oakhallow", celebrant(noon));
    assertEquals("ambrose-tarnwick", line(noon, "2026-12-02").get("celebrant"));
    delete("/api/celebrants/assignments/" + id).then().statusCode(204);
    delete("/api/celebrants/assignments/" + id).then().statusCode(204);
    assertEquals("ambrose-tarnwick", celebrant(noon));
  }

  @Test
  void whoever_is_named_by_hand_is_the_one_who_is_asked_for() {
    String noon = mass("ht", "2026-12-02T12:10");

    assign(noon, false);

    assertEquals("fintan-oakhallow", line(noon, "2026-12-02").get("celebrant"));
  }

  @Test
  void whoever_goes_back_and_presses_again_is_told_what_was_done_and_nothing_is_done_twice() {
    String noon = mass("ht", "2026-12-02T12:10");
    String id = assign(noon, false);

    assertEquals(id, assign(noon, false));

    delete("/api/celebrants/assignments/" + id).then().statusCode(204);
    assertEquals("ambrose-tarnwick", celebrant(noon));
    assertNotEquals(id, assign(noon, false));
  }

  @Test
  void what_was_done_and_changed_since_is_no_answer_to_pressing_again() {
    assign(funeral, false);
    post(
            "/api/celebrants/assignments",
            Map.of("assignments", List.of(named(funeral, "cosmas-ilverton", "fintan-oakhallow"))))
        .then()
        .statusCode(201);

    post(
            "/api/celebrants/assignments",
            Map.of("assignments", List.of(named(funeral, "fintan-oakhallow", "ambrose-tarnwick"))))
        .then()
        .statusCode(409);
  }

  @Test
  void nothing_is_named_where_one_of_several_masses_has_changed_meanwhile() {
    Map<String, Object> first = named(funeral, "fintan-oakhallow", "ambrose-tarnwick");
    Map<String, Object> stale = named(morning, "fintan-oakhallow", "cosmas-ilverton");

    post("/api/celebrants/assignments", Map.of("assignments", List.of(first, stale)))
        .then()
        .statusCode(409);

    assertEquals("ambrose-tarnwick", celebrant(funeral));
  }

  @Test
  void what_is_no_assignment_is_refused() {
    refusing.unfit(
        () -> post("/api/celebrants/assignments", Map.of("assignments", List.of())), "assignments");
    refusing.notThere(
        () ->
            post(
                "/api/celebrants/assignments",
                Map.of("assignments", List.of(named(funeral, "nobody-known", "")))));
    post(
            "/api/celebrants/assignments",
            Map.of("assignments", List.of(named(funeral, "maren-dovecote", "ambrose-tarnwick"))))
        .then()
        .statusCode(422);
  }

  @Test
  void a_third_mass_on_a_weekday_is_one_too_many_by_the_calendar_day_and_not_by_the_liturgical() {
    assign(funeral, true);
    String celebrant = celebrant(morning);
    JsonPath advice = get("/api/celebrants/masses/" + morning).jsonPath();

    String why = advice.getString("priests.find { it.priest == '%s' }.why".formatted(celebrant));
    assertTrue(why.contains("it would be his third Mass on Saturday 5 December"), why);
    assertTrue(why.contains("the leave on file is for two"), why);
    String effects = advice.getList("effects").toString();
    assertTrue(
        effects.contains(
            "counted by the calendar day it is his third Mass on Saturday 5 December, one too many; counted by the liturgical day it is his second Mass for Saturday 5 December, which he may celebrate"),
        effects);

    put("/api/settings", Map.of("policies", Map.of("countBy", "liturgical")))
        .then()
        .statusCode(200);

    assertTrue(
        get("/api/celebrants/masses/" + morning)
            .jsonPath()
            .getBoolean("priests.find { it.priest == '%s' }.can".formatted(celebrant)));
  }

  @Test
  void greeting_road_and_setting_out_say_when_a_priest_can_begin_elsewhere() {
    String asked =
        Sending.mass(
                Map.of(
                    "church",
                    "sm",
                    "start",
                    SUNDAY + "T09:45",
                    "minutes",
                    60,
                    "celebrant",
                    "cosmas-ilverton"))
            .get("id")
            .toString();

    JsonPath advice = get("/api/celebrants/masses/" + asked).jsonPath();

    assertTrue(
        advice
            .getString("priests.find { it.priest == 'cosmas-ilverton' }.why")
            .endsWith("24 minutes away: he could begin here at 10:24 at the earliest"));
    assertTrue(
        advice
            .getString("priests.find { it.priest == 'ambrose-tarnwick' }.why")
            .endsWith("34 minutes away: he could begin here at 10:04 at the earliest"));
  }

  @Test
  void where_nobody_can_come_each_has_his_reason_and_ways_out_are_shown() {
    String asked =
        Sending.mass(
                Map.of(
                    "church",
                    "sm",
                    "start",
                    SUNDAY + "T09:45",
                    "minutes",
                    60,
                    "celebrant",
                    "cosmas-ilverton"))
            .get("id")
            .toString();

    JsonPath advice = get("/api/celebrants/masses/" + asked).jsonPath();

    assertEquals(List.of(), advice.getList("priests.findAll { it.can }"));
    assertEquals(
        "takes one Mass a day and has 17:30 at Holy Trinity",
        advice.getString("priests.find { it.priest == 'fintan-oakhallow' }.why"));
    List<String> ways = advice.getList("waysOut");
    assertEquals("Begin at 12:25: then Father Ambrose Tarnwick can take it.", ways.get(0));
    assertTrue(
        ways.contains("People go to Saint Anne, 16 minutes away, for the Mass of 10:45."),
        ways.toString());
    assertTrue(ways.stream().anyMatch(way -> way.startsWith("Ask a visiting priest (")));
  }

  @Test
  void where_all_are_away_nobody_is_sent_to_their_masses_or_to_whoever_said_that_he_is_away_too() {
    String asked =
        Sending.mass(Map.of("church", "sm", "start", SUNDAY + "T09:45", "minutes", 60))
            .get("id")
            .toString();
    List<String> priests = get("/api/people").jsonPath().getList(PRIESTS);
    assertTrue(priests.size() > 3, priests.toString());
    priests.forEach(
        one ->
            Sending.post(
                    "/api/people/%s/absences".formatted(one), Map.of("from", SUNDAY, "to", SUNDAY))
                .then()
                .statusCode(201));

    assertEquals(
        List.of(
            "A liturgy of the word, where the diocesan bishop provides for it; it is no Mass (can. 1248 § 2)."),
        get("/api/celebrants/masses/" + asked).jsonPath().getList("waysOut"));
    page("/celebrants/%s?to=%s".formatted(SUNDAY, SUNDAY))
        .says("of them are not available then.", "Tarnwick not available");
    page("/celebrants/proposal?from=%s&to=%s".formatted(SUNDAY, SUNDAY))
        .says("A proposal for 6 December 2026", "Nobody celebrates more than once a day")
        .keepsSilentOn("6 to 6 December", "Some celebrate more than once");
  }

  @Test
  void how_days_are_counted_decides_whether_he_who_takes_one_a_day_may_take_the_eve_too() {
    String eve =
        Sending.mass(
                Map.of(
                    "church",
                    "ht",
                    "start",
                    "2026-12-07T18:00",
                    "minutes",
                    60,
                    "celebrant",
                    "ambrose-tarnwick"))
            .get("id")
            .toString();

    JsonPath advice = get("/api/celebrants/masses/" + eve).jsonPath();

    assertTrue(advice.getBoolean("priests.find { it.priest == 'fintan-oakhallow' }.can"));
    assertTrue(
        advice
            .getList("effects")
            .contains(
                "Oakhallow: counted by the calendar day it is his first Mass on Monday 7 December, which he may celebrate; counted by the liturgical day it is his second Mass for Tuesday 8 December, one too many. The settings say: by the calendar day."),
        advice.getList("effects").toString());
  }

  @Test
  void whoever_is_ill_is_replaced_and_nobody_else_is_moved() {
    JsonPath proposal =
        get("/api/celebrants?from=2026-12-01&to=2026-12-04&without=ambrose-tarnwick").jsonPath();

    assertEquals("proven", proposal.getString("status"));
    List<Map<String, Object>> masses = proposal.getList("masses");
    assertFalse(masses.isEmpty());
    for (Map<String, Object> mass : masses) {
      assertEquals("ambrose-tarnwick", mass.get("now"));
      assertFalse("ambrose-tarnwick".equals(mass.get("celebrant")));
    }
  }

  @Test
  void pages_say_who_celebrates_where_and_a_press_names_and_another_undoes() {
    page("/celebrants/" + SATURDAY).says("30 November to 6 December 2026", "Shares");
    page("/celebrants/%s?to=%s".formatted("2026-12-01", "2026-12-31")).says("Oakhallow");
    page("/celebrants/proposal?from=%s&to=%s".formatted(SATURDAY, SATURDAY))
        .says("Father Fintan Oakhallow", "in place of Father Ambrose Tarnwick");
    page("/masses/%s/celebrant".formatted(funeral))
        .says("Who celebrates", "Father Ambrose Tarnwick is at Holy Trinity until 12:30");

    String done =
        send(
                "/celebrants/assignments",
                Map.of(
                    "assign",
                    List.of(pressFor(funeral)),
                    "back",
                    List.of("/celebrants/2026-11-30")))
            .wayOn();

    page(done).says("Named: one Mass has a new celebrant.", "Undo");
    assertEquals("fintan-oakhallow", celebrant(funeral));
    String id = done.substring(done.indexOf("done=") + "done=".length());
    press("/celebrants/assignments/%s/undo".formatted(id));
    assertEquals("ambrose-tarnwick", celebrant(funeral));
    page(done).says("Undone: it is as it was before.");
  }

  @Test
  void beside_the_form_of_a_mass_stands_whether_the_one_who_is_typed_can() {
    String said =
        get("/celebrant-advice?church=sj&date=%s&time=11:00&minutes=60&celebrant=Tarnwick&id=%s"
                .formatted(SATURDAY, funeral))
            .asString();

    assertTrue(said.contains("Father Ambrose Tarnwick is at Holy Trinity until 12:30"), said);
    assertTrue(said.contains("Father Fintan Oakhallow could take it, too."), said);
    get("/celebrant-advice?church=sj&date=&time=11:00").then().statusCode(200);
  }

  @Test
  void benediction_is_no_mass_and_nobody_is_looked_for() {
    // Can. 905 speaks of celebrating the Eucharist.
    Map<String, Object> benediction =
        Sending.mass(Map.of("church", "sa", "start", SUNDAY + "T15:00", "mass", "benediction"));

    get("/api/celebrants/masses/" + benediction.get("id"))
        .then()
        .statusCode(422)
        .body("detail", startsWith("This is no Mass, so it is not counted"));
  }

  private static void company(String... named) {
    String confirmation = mass("ht", SATURDAY + "T10:30");
    Map<String, Object> body = get("/api/masses/" + confirmation).jsonPath().getMap("");
    put("/api/masses/" + confirmation, Sending.with(body, "named", List.of(named)))
        .then()
        .statusCode(200);
  }

  private static String mass(String church, String start) {
    return get("/api/masses?from=%s&to=%s"
            .formatted(start.substring(0, 10), start.substring(0, 10)))
        .jsonPath()
        .getString(
            "find { it.church == '%s' && it.start.startsWith('%s') }.id".formatted(church, start));
  }

  private static Map<String, Object> line(String mass, String date) {
    return get("/api/celebrants?from=%s&to=%s".formatted(date, date))
        .jsonPath()
        .getMap("masses.find { it.mass == '%s' }".formatted(mass));
  }

  private static String celebrant(String mass) {
    return get("/api/masses/" + mass).jsonPath().getString("celebrant");
  }

  /** What naming the one who is proposed sends, as it stands on the page. */
  private static String pressFor(String mass) {
    String page =
        get("/celebrants/proposal?from=%s&to=%s".formatted(SATURDAY, SATURDAY)).asString();
    Matcher press = Pattern.compile("value=\"(" + mass + " [^\"]+)\"").matcher(page);
    assertTrue(press.find());
    return press.group(1);
  }

  private static Map<String, Object> named(String mass, String celebrant, String expected) {
    return Map.of("mass", mass, "celebrant", celebrant, "expected", expected);
  }

  private static String assign(String mass, boolean inPlace) {
    return post(
            "/api/celebrants/assignments",
            Map.of(
                "assignments",
                List.of(named(mass, "fintan-oakhallow", "ambrose-tarnwick")),
                "inPlace",
                inPlace))
        .then()
        .statusCode(201)
        .extract()
        .path("id");
  }
}
