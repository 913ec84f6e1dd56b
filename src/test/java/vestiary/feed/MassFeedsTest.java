package vestiary.feed;

import static org.hamcrest.Matchers.containsString;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Asking;
import vestiary.scenario.Planning;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/**
 * Masses for calendar programs: of one person and of a church, opened by a key that can be ended.
 */
@QuarkusTest
class MassFeedsTest {

  static final String MINE = "/feeds/mine.ics";
  private static final String CHURCH = "/feeds/masses.ics";

  @Inject Scenario scenario;
  @Inject LettingIn letting;

  private String session;
  private String key;

  @BeforeEach
  void father_ilverton_has_made_a_key() {
    scenario.load();
    UUID user = letting.user("cosmas", Role.MINISTER);
    Sending.put(
            "/api/users/" + user,
            Map.of(
                "login",
                "cosmas",
                "name",
                "Some minister",
                "role",
                "minister",
                "person",
                "cosmas-ilverton"))
        .then()
        .statusCode(200);
    session = letting.session(user);
    key = key(session);
  }

  static String key(String session) {
    String page = LettingIn.browser(session).get("/account").asString();
    String made =
        LettingIn.browser(session)
            .formParam("form-token", LettingIn.formToken(page))
            .formParam("feed", "My telephone")
            .post("/account/feeds")
            .asString();
    assertTrue(made.contains("/feeds/mine.ics?key="), made);
    return made.replaceAll("(?s).*key=([A-Za-z0-9_.-]+)</code>.*", "$1");
  }

  @Test
  void between_two_churches_on_one_day_the_way_stands_in_the_calendar() throws Exception {
    Sending.put("/api/journeys", Map.of("from", "ht", "to", "sa", "minutes", 25))
        .then()
        .statusCode(200);
    ownMass("ht", "2026-12-10T15:00");
    String next = ownMass("sa", "2026-12-10T18:00");

    VEvent drive = starting(next + "-drive");
    assertEquals("Drive to Saint Anne, 25 minutes, leave by 17:35", value(drive, Property.SUMMARY));
    assertTrue(value(drive, Property.DTSTART).endsWith("20261210T173500"), "" + drive);
    assertTrue(value(drive, Property.DTEND).endsWith("20261210T180000"), "" + drive);
    assertTrue(drive.toString().contains("DTSTART;TZID=America/Chicago:"), drive.toString());
    assertEquals(0, sequence(starting(next + "-drive")));

    Asking.change(Asking.mass("sa", "2026-12-10T18:00"), Map.of("start", "2026-12-10T18:30"));
    assertEquals(1, sequence(starting(next + "-drive")));
    assertTrue(value(starting(next + "-drive"), Property.SUMMARY).endsWith("leave by 18:05"));

    Sending.delete("/api/masses/" + next).then().statusCode(204);
    assertEquals(0, all(key, next + "-drive").size());
  }

  @Test
  void a_sacristan_has_the_journeys_of_the_vestments_of_their_church() throws Exception {
    Planning.applied("2026-12-05", "2026-12-11");
    long theirs =
        Asking.list("/api/movements?from=2026-12-05&to=2026-12-11").stream()
            .filter(one -> "ht".equals(one.get("from")) || "ht".equals(one.get("to")))
            .count();
    assertTrue(theirs > 0);
    String own =
        key(letting.session(letting.named("ysolde", "Ysolde Hatherby", Role.SACRISTAN, "ht")));

    List<VEvent> rides = all(own, "");

    assertTrue(rides.size() >= theirs, rides.toString());
    rides.forEach(
        ride -> assertTrue(value(ride, Property.UID).contains("-ride@"), ride.toString()));
    assertTrue(
        rides.stream()
            .anyMatch(ride -> value(ride, Property.SUMMARY).contains(": from Holy Trinity to ")),
        rides.toString());
    assertEquals(
        rides.stream().map(ride -> value(ride, Property.UID)).distinct().count(), rides.size());
    assertEquals(rides.toString(), all(own, "").toString());
  }

  private static String ownMass(String church, String start) {
    return Sending.mass(Map.of("church", church, "start", start, "celebrant", "cosmas-ilverton"))
        .get("id")
        .toString();
  }

  private VEvent starting(String uid) throws Exception {
    return Asking.only(all(key, uid));
  }

  private static List<VEvent> all(String key, String uid) throws Exception {
    Response answer = LettingIn.nobody().queryParam("key", key).get(MINE);
    assertEquals(200, answer.statusCode(), answer.asString());
    return events(answer).stream()
        .filter(event -> value(event, Property.UID).startsWith(uid))
        .toList();
  }

  @Test
  void a_person_s_own_calendar_has_his_masses_and_nobody_else_s() throws Exception {
    List<String> his =
        Asking.list("/api/masses?from=2026-11-16&to=2027-05-31").stream()
            .filter(
                mass ->
                    "cosmas-ilverton".equals(mass.get("celebrant"))
                        || String.valueOf(mass.get("named")).contains("cosmas-ilverton"))
            .map(mass -> mass.get("id").toString())
            .sorted()
            .toList();
    assertTrue(his.size() > 20, his.toString());

    List<VEvent> events =
        events(open(MINE, "")).stream()
            .filter(event -> !value(event, Property.UID).contains("-drive@"))
            .toList();

    assertEquals(
        his,
        events.stream()
            .filter(event -> !value(event, Property.STATUS).equals("CANCELLED"))
            .map(event -> value(event, Property.UID).split("@")[0])
            .sorted()
            .toList());
    assertTrue(value(events.get(0), Property.DESCRIPTION).startsWith("You "), events.toString());
  }

  @Test
  void a_church_s_calendar_has_that_church_s_alone() throws Exception {
    List<VEvent> events = events(open(CHURCH, "sa"));

    assertTrue(events.size() > 20);
    events.forEach(
        event -> assertTrue(value(event, Property.LOCATION).startsWith("Saint Anne"), "" + event));
    LettingIn.nobody()
        .queryParam("key", key)
        .queryParam("church", "nowhere")
        .get(CHURCH)
        .then()
        .statusCode(404);
  }

  @Test
  void a_moved_mass_keeps_its_uid_and_counts_on_and_a_cancelled_one_says_so() throws Exception {
    Map<String, Object> mass = Asking.mass("sa", "2026-12-08T18:30");
    String id = mass.get("id").toString();
    int before = sequence(event(id));
    assertEquals("CONFIRMED", value(event(id), Property.STATUS));

    Asking.change(mass, Map.of("start", "2026-12-08T19:00"));
    assertTrue(sequence(event(id)) > before);
    assertTrue(value(event(id), Property.DTSTART).endsWith("T190000"), "" + event(id));

    int moved = sequence(event(id));
    Asking.change(
        Asking.mass("sa", "2026-12-08T19:00"), Map.of("note", "A word for the sacristan"));
    assertEquals(moved, sequence(event(id)), "a note is no change of the calendar");

    Sending.delete("/api/masses/" + id).then().statusCode(204);
    assertEquals("CANCELLED", value(event(id), Property.STATUS));
    assertTrue(sequence(event(id)) > moved);
  }

  @Test
  void whoever_has_it_already_is_told_so_and_nothing_more() {
    Response first = open(CHURCH, "ht");
    String tag = first.header("ETag");

    Response again =
        LettingIn.nobody()
            .header("If-None-Match", tag)
            .queryParam("key", key)
            .queryParam("church", "ht")
            .get(CHURCH);
    assertEquals(304, again.statusCode());
    assertEquals("", again.asString());
    assertEquals(tag, again.header("ETag"));

    Sending.delete("/api/masses/" + Asking.masses("ht", "2026-12-06").get(0).get("id"))
        .then()
        .statusCode(204);
    LettingIn.nobody()
        .header("If-None-Match", tag)
        .queryParam("key", key)
        .queryParam("church", "ht")
        .get(CHURCH)
        .then()
        .statusCode(200);
  }

  @Test
  void a_hundred_times_a_minute_is_answered_and_the_key_can_be_ended() {
    String tag = open(CHURCH, "").header("ETag");
    for (int i = 0; i < 100; i++) {
      int status =
          LettingIn.nobody()
              .header("If-None-Match", tag)
              .queryParam("key", key)
              .get(CHURCH)
              .statusCode();
      assertTrue(status == 304 || status == 429, "was answered " + status);
    }
    String page = LettingIn.browser(session).get("/account").asString();
    String end = page.replaceAll("(?s).*action=\"(/account/tokens/[^\"]+/end)\".*", "$1");
    LettingIn.browser(session)
        .formParam("form-token", LettingIn.formToken(page))
        .post(end)
        .then()
        .statusCode(303);

    LettingIn.nobody()
        .queryParam("key", key)
        .get(CHURCH)
        .then()
        .statusCode(401)
        .body("detail", containsString("has ended"));
    LettingIn.nobody().get(MINE).then().statusCode(401);
  }

  @Test
  void nobody_but_priests_deacons_and_bishops_is_named_in_a_church_s_calendar() throws Exception {
    String file = open(CHURCH, "").asString();

    List<Map<String, Object>> others =
        Asking.list("/api/people").stream()
            .filter(one -> !List.of("priest", "deacon", "bishop").contains(one.get("role")))
            .toList();
    assertFalse(others.isEmpty());
    others.forEach(
        one -> {
          String name = one.get("name").toString();
          String surname = name.substring(name.lastIndexOf(' ') + 1);
          assertFalse(file.replace("\r\n ", "").contains(surname), surname);
        });
  }

  private VEvent event(String mass) throws Exception {
    return Asking.only(
        events(open(CHURCH, "sa")).stream()
            .filter(event -> value(event, Property.UID).startsWith(mass))
            .toList());
  }

  private Response open(String address, String church) {
    Response answer =
        church.isEmpty()
            ? LettingIn.nobody().queryParam("key", key).get(address)
            : LettingIn.nobody().queryParam("key", key).queryParam("church", church).get(address);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer;
  }

  static List<VEvent> events(Response answer) throws Exception {
    Calendar read = new CalendarBuilder().build(new StringReader(answer.asString()));
    assertFalse(read.validate().hasErrors(), read.validate().toString());
    return read.getComponents(Component.VEVENT);
  }

  static int sequence(VEvent event) {
    return Integer.parseInt(value(event, Property.SEQUENCE));
  }

  static String value(VEvent event, String property) {
    return event.getProperty(property).map(p -> ((Property) p).getValue()).orElse("");
  }
}
