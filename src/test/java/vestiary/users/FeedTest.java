package vestiary.users;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalendar;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Scenario;

/** A calendar program can send nothing but an address: its key opens the calendar, and no more. */
@QuarkusTest
class FeedTest {

  private static final String FEED = "/feeds/ordo.ics";

  @Inject Scenario scenario;
  @Inject LettingIn letting;

  private String session;

  @BeforeEach
  void somebody_has_come_in() {
    scenario.load();
    session = letting.session(letting.user(Role.READER));
  }

  @Test
  void the_key_opens_the_present_and_the_next_year() {
    String key = key();

    String file =
        LettingIn.nobody()
            .queryParam("key", key)
            .get(FEED)
            .then()
            .statusCode(200)
            .contentType(startsWith("text/calendar"))
            .header("Cache-Control", containsString("private"))
            .extract()
            .asString();

    ICalendar calendar = Biweekly.parse(file).first();
    // 29 November 2026 to 2 December 2028: two liturgical years (UNLY 40), by the tests' clock.
    long days =
        calendar.getEvents().stream()
            .map(event -> event.getDateStart().getValue().toString())
            .distinct()
            .count();
    assertEquals(735, days);
    LettingIn.nobody()
        .queryParam("key", key)
        .queryParam("church", "ht")
        .get(FEED)
        .then()
        .statusCode(200);
  }

  @Test
  void it_opens_nothing_else() {
    String key = key();

    LettingIn.nobody().queryParam("key", key).get("/api/masses").then().statusCode(401);
    LettingIn.nobody().queryParam("key", key).get("/year/2027.ics").then().statusCode(401);
    LettingIn.program(key).get("/api/churches").then().statusCode(401);
    LettingIn.program(key).get(FEED).then().statusCode(401);
  }

  @Test
  void a_token_for_programs_is_no_key_and_neither_is_anything_else() {
    String token = letting.token(letting.user("other", Role.ADMINISTRATOR));

    LettingIn.nobody().queryParam("key", token).get(FEED).then().statusCode(401);
    LettingIn.nobody().queryParam("key", "x").get(FEED).then().statusCode(401);
    LettingIn.nobody().get(FEED).then().statusCode(401);
  }

  @Test
  void it_is_shown_once_says_when_it_was_used_and_is_ended_by_one_press() {
    String key = key();
    LettingIn.nobody().queryParam("key", key).get(FEED).then().statusCode(200);

    String page = LettingIn.browser(session).get("/account").asString();

    assertFalse(page.contains(key), "it is shown again");
    assertEquals(true, page.contains("Address for a calendar program"), page);
    String end = page.replaceAll("(?s).*action=\"(/account/tokens/[^\"]+/end)\".*", "$1");
    LettingIn.browser(session)
        .formParam("form-token", LettingIn.formToken(page))
        .post(end)
        .then()
        .statusCode(303);
    LettingIn.nobody()
        .queryParam("key", key)
        .get(FEED)
        .then()
        .statusCode(401)
        .body("detail", containsString("has ended"));
  }

  @Test
  void it_opens_in_the_calendar_program_and_is_copied_by_one_press() {
    String made = LettingIn.feedPage(session);

    String key = LettingIn.feedKey(made);
    assertTrue(made.contains("href=\"webcal://"), made);
    assertTrue(made.contains("/feeds/ordo.ics?key=%s\">Open in".formatted(key)), made);
    assertTrue(made.contains("/feeds/ordo.ics?key=%s\" hidden>Copy it".formatted(key)), made);
  }

  private String key() {
    return LettingIn.feedKey(LettingIn.feedPage(session));
  }
}
