package vestiary.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.UUID;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Asking;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/**
 * A priest's own calendar over a Mass at which he is away: the event stays the same one, says so,
 * leaves him free and counts on (RFC 5545, 3.8.4.7, 3.8.7.4 and 3.8.2.7).
 */
@QuarkusTest
class AwayInCalendarTest {

  private static final String DAY = "2026-12-10";

  @Inject Scenario scenario;
  @Inject LettingIn letting;

  private String key;
  private String first;
  private String second;

  @BeforeEach
  void father_ilverton_drives_from_one_mass_to_the_next() {
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
    key = MassFeedsTest.key(letting.session(user));
    Sending.put("/api/journeys", Map.of("from", "ht", "to", "sa", "minutes", 25))
        .then()
        .statusCode(200);
    first = ownMass("ht", DAY + "T15:00");
    second = ownMass("sa", DAY + "T18:00");
  }

  @Test
  void while_he_is_away_it_says_so_and_leaves_him_free() throws Exception {
    VEvent before = event(second);
    assertTrue(value(before, Property.DESCRIPTION).startsWith("You celebrate. "), "" + before);
    assertEquals("OPAQUE", value(before, Property.TRANSP));

    awayFrom("17:00");

    VEvent away = event(second);
    assertTrue(
        value(away, Property.DESCRIPTION)
            .startsWith("You are away then; another is to be named to celebrate. Set out by "),
        "" + away);
    assertTrue(value(away, Property.SUMMARY).endsWith("; you are away"), "" + away);
    assertEquals("TRANSPARENT", value(away, Property.TRANSP));
    assertEquals("CONFIRMED", value(away, Property.STATUS), "the Mass stands");
    assertEquals(value(before, Property.UID), value(away, Property.UID));
    assertTrue(value(event(first), Property.DESCRIPTION).startsWith("You celebrate. "));
    assertFalse(whole().contains(second + "-drive@"), "nobody drives to where he is not");
  }

  @Test
  void it_counts_on_when_he_is_away_and_when_he_is_back_and_with_the_mass_in_between()
      throws Exception {
    int before = sequence();

    String absence = awayFrom("17:00");
    int away = sequence();
    assertEquals(before + 1, away);
    assertEquals(away, sequence(), "asking again is no change");

    Asking.change(Asking.mass("sa", DAY + "T18:00"), Map.of("start", DAY + "T18:30"));
    int moved = sequence();
    assertTrue(moved > away, moved + " after " + away);

    Sending.delete("/api/people/cosmas-ilverton/absences/" + absence).then().statusCode(204);
    int back = sequence();
    assertTrue(back > moved, back + " after " + moved);
    assertTrue(value(event(second), Property.DESCRIPTION).startsWith("You celebrate. "));

    Sending.delete("/api/masses/" + second).then().statusCode(204);
    assertTrue(sequence() > back);
  }

  @Test
  void whoever_was_never_away_is_counted_as_the_mass_is() throws Exception {
    int before = sequence();

    Asking.change(Asking.mass("sa", DAY + "T18:00"), Map.of("start", DAY + "T18:30"));

    assertEquals(before + 1, sequence());
  }

  private static String awayFrom(String hour) {
    return Sending.post(
            "/api/people/cosmas-ilverton/absences", Map.of("from", DAY + "T" + hour, "to", DAY))
        .then()
        .statusCode(201)
        .extract()
        .path("absence.id");
  }

  private int sequence() throws Exception {
    return MassFeedsTest.sequence(event(second));
  }

  private VEvent event(String mass) throws Exception {
    return Asking.only(
        MassFeedsTest.events(ask()).stream()
            .filter(event -> value(event, Property.UID).startsWith(mass + "@"))
            .toList());
  }

  private String whole() {
    return ask().asString();
  }

  private Response ask() {
    Response answer = LettingIn.nobody().queryParam("key", key).get(MassFeedsTest.MINE);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer;
  }

  private static String value(VEvent event, String property) {
    return MassFeedsTest.value(event, property);
  }

  private static String ownMass(String church, String start) {
    return Sending.mass(Map.of("church", church, "start", start, "celebrant", "cosmas-ilverton"))
        .get("id")
        .toString();
  }
}
