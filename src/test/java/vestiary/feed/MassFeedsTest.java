package vestiary.feed;

import static org.hamcrest.Matchers.containsString;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.feed.CalendarEvents.sequence;
import static vestiary.feed.CalendarEvents.value;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Asking;
import vestiary.scenario.Planning;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/**
 * Masses for calendar programs: of one person and of a church, opened by a key that can be ended.
 */
@QuarkusTest
class MassFeedsTest {

  private static final String CHURCH = "/feeds/masses.ics";

  @Inject LettingIn letting;
  @Inject CalendarOfAPriest his;

  @BeforeEach
  void father_ilverton_has_made_a_key() {
    his.begin();
  }

  @Test
  void between_two_churches_on_one_day_the_way_stands_in_the_calendar() {
    String next = CalendarOfAPriest.twoOn("2026-12-10").second();

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
    assertEquals(0, CalendarEvents.of(his.ask(), next + "-drive").size());
  }

  @Test
  void a_sacristan_has_the_journeys_of_the_vestments_of_their_church() {
    Planning.applied("2026-12-05", "2026-12-11");
    long theirs =
        Asking.list("/api/movements?from=2026-12-05&to=2026-12-11").stream()
            .filter(one -> "ht".equals(one.get("from")) || "ht".equals(one.get("to")))
            .count();
    assertTrue(theirs > 0);
    String own =
        LettingIn.feedKey(
            LettingIn.feedPage(
                letting.session(letting.named("ysolde", "Ysolde Hatherby", Role.SACRISTAN, "ht"))));

    List<VEvent> rides = CalendarEvents.of(CalendarOfAPriest.ask(own));

    assertTrue(rides.size() >= theirs, rides.toString());
    rides.forEach(
        ride -> assertTrue(value(ride, Property.UID).contains("-ride@"), ride.toString()));
    assertTrue(
        rides.stream()
            .anyMatch(ride -> value(ride, Property.SUMMARY).contains(": from Holy Trinity to ")),
        rides.toString());
    assertEquals(
        rides.stream().map(ride -> value(ride, Property.UID)).distinct().count(), rides.size());
    assertEquals(rides.toString(), CalendarEvents.of(CalendarOfAPriest.ask(own)).toString());
  }

  private VEvent starting(String uid) {
    return Asking.only(CalendarEvents.of(his.ask(), uid));
  }

  @Test
  void a_person_s_own_calendar_has_his_masses_and_nobody_else_s() {
    List<String> named =
        Asking.list("/api/masses?from=2026-11-16&to=2027-05-31").stream()
            .filter(
                mass ->
                    "cosmas-ilverton".equals(mass.get("celebrant"))
                        || String.valueOf(mass.get("named")).contains("cosmas-ilverton"))
            .map(mass -> mass.get("id").toString())
            .sorted()
            .toList();
    assertTrue(named.size() > 20, named.toString());

    List<VEvent> events =
        CalendarEvents.of(his.ask()).stream()
            .filter(event -> !value(event, Property.UID).contains("-drive@"))
            .toList();

    assertEquals(
        named,
        events.stream()
            .filter(event -> !value(event, Property.STATUS).equals("CANCELLED"))
            .map(event -> value(event, Property.UID).split("@")[0])
            .sorted()
            .toList());
    assertTrue(value(events.get(0), Property.DESCRIPTION).startsWith("You "), events.toString());
  }

  @Test
  void a_church_s_calendar_has_that_church_s_alone() {
    List<VEvent> events = CalendarEvents.of(open("sa"));

    assertTrue(events.size() > 20);
    events.forEach(
        event -> assertTrue(value(event, Property.LOCATION).startsWith("Saint Anne"), "" + event));
    LettingIn.nobody()
        .queryParam("key", his.key())
        .queryParam("church", "nowhere")
        .get(CHURCH)
        .then()
        .statusCode(404);
  }

  @Test
  void a_moved_mass_keeps_its_uid_and_counts_on_and_a_cancelled_one_says_so() {
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
  void a_celebrant_who_is_away_is_said_to_be_and_why_is_not() {
    String id = CalendarOfAPriest.mass("sa", "2026-12-10T18:00");
    String before = said(id);
    assertTrue(before.startsWith("Ilverton. "), before);

    Sending.post(
            "/api/people/cosmas-ilverton/absences",
            Map.of("from", "2026-12-10", "to", "2026-12-10", "reason", "A tooth"))
        .then()
        .statusCode(201);

    String said = said(id);
    assertTrue(said.startsWith("Ilverton (not available then). "), said);
    assertFalse(open("sa").asString().contains("tooth"));
  }

  @Test
  void whoever_has_it_already_is_told_so_and_nothing_more() {
    Response first = open("ht");
    String tag = first.header("ETag");

    Response again =
        LettingIn.nobody()
            .header("If-None-Match", tag)
            .queryParam("key", his.key())
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
        .queryParam("key", his.key())
        .queryParam("church", "ht")
        .get(CHURCH)
        .then()
        .statusCode(200);
  }

  @Test
  void a_hundred_times_a_minute_is_answered_and_the_key_can_be_ended() {
    String tag = open("").header("ETag");
    for (int i = 0; i < 100; i++) {
      int status =
          LettingIn.nobody()
              .header("If-None-Match", tag)
              .queryParam("key", his.key())
              .get(CHURCH)
              .statusCode();
      assertTrue(status == 304 || status == 429, "was answered " + status);
    }
    String page = LettingIn.browser(his.session()).get("/account").asString();
    String end = page.replaceAll("(?s).*action=\"(/account/tokens/[^\"]+/end)\".*", "$1");
    LettingIn.browser(his.session())
        .formParam("form-token", LettingIn.formToken(page))
        .post(end)
        .then()
        .statusCode(303);

    LettingIn.nobody()
        .queryParam("key", his.key())
        .get(CHURCH)
        .then()
        .statusCode(401)
        .body("detail", containsString("has ended"));
    LettingIn.nobody().get(CalendarOfAPriest.ADDRESS).then().statusCode(401);
  }

  @Test
  void nobody_but_priests_deacons_and_bishops_is_named_in_a_church_s_calendar() {
    String file = open("").asString();

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

  private String said(String mass) {
    return value(event(mass), Property.DESCRIPTION);
  }

  private VEvent event(String mass) {
    return Asking.only(CalendarEvents.of(open("sa"), mass));
  }

  private Response open(String church) {
    Response answer =
        church.isEmpty()
            ? LettingIn.nobody().queryParam("key", his.key()).get(CHURCH)
            : LettingIn.nobody()
                .queryParam("key", his.key())
                .queryParam("church", church)
                .get(CHURCH);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer;
  }
}
