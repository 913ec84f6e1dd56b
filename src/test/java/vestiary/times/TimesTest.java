package vestiary.times;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Page;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/** People see Mass times as they were published, without sign-in, and nothing else. */
@QuarkusTest
class TimesTest {

  @Inject Scenario scenario;
  @Inject LettingIn letting;

  @BeforeEach
  void a_real_cluster() {
    scenario.load();
  }

  @Test
  void before_anything_is_published_people_see_nothing() {
    LettingIn.browser().get("/week").then().statusCode(303);

    String page = people("/times");

    assertTrue(page.contains("No Mass times are published for this week."), page);
    assertFalse(page.contains("Holy Trinity, Tollbridge"), page);
    assertFalse(page.contains("/times/publish"), page);
    LettingIn.browser().post("/times/publish").then().statusCode(not(200));
    assertTrue(people("/times").contains("No Mass times are published for this week."));
  }

  @Test
  void one_press_publishes_and_what_is_published_stays_until_the_next() {
    publish("");
    Page seen = Page.of(people("/times?week=2026-12-08&church=sa"));
    seen.says(
        "Monday 7 December to Sunday 13 December",
        "Tuesday 8 December",
        "Changed times",
        "at 18:30 instead of 18:00");

    Asking.change(Asking.mass("sa", "2026-12-08T18:30"), Map.of("start", "2026-12-08T19:15"));

    Page.of(people("/times?week=2026-12-08&church=sa")).says("18:30").keepsSilentOn("19:15");
    Browsing.page("/times")
        .says("Since then two lines of the schedule changed", "Now: Tuesday 8 December, 19:15");
    publish("8");
    Page.of(people("/times?week=2026-12-08&church=sa"))
        .says("at 19:15 instead of 18:00")
        .keepsSilentOn("18:30");
  }

  @Test
  void a_usual_mass_that_is_not_said_is_told() {
    Sending.delete("/api/masses/" + Asking.mass("ht", "2026-12-06T17:30").get("id"))
        .then()
        .statusCode(204);
    publish("");

    Page.of(people("/times?church=ht&week=2026-12-06"))
        .says("Sunday 6 December, No Mass at 17:30.");
    Page.of(people("/times?church=ht&week=2026-12-06&lang=es"))
        .says("Domingo 6 de diciembre, No hay misa a las 17:30.", "Misa dominical");
  }

  @Test
  void whose_browser_reads_spanish_sees_it_and_the_door_s_sheet_is_the_cluster_s() {
    publish("");

    Page.of(inSpanish("/times?church=ht&week=2026-12-06")).says("Misa dominical");
    Page.of(inSpanish("/times?church=ht&week=2026-12-06&lang=en")).keepsSilentOn("Misa dominical");
    Page.of(inSpanish("/times/door?church=ht&week=2026-12-06")).keepsSilentOn("Misa dominical");
  }

  @Test
  void nobody_is_named_unless_the_cluster_chooses_so() {
    publish("");
    for (String address : List.of("/times", "/times/bulletin.txt", "/feeds/times.ics")) {
      for (String surname : List.of("Tarnwick", "Ilverton", "Oakhallow", "Fenwarden")) {
        assertFalse(people(address).contains(surname), address);
      }
    }

    Browsing.send("/letters/settings", Map.of("namesPublic", List.of("true")))
        .leadsTo("/letters?done=saved");
    publish("");

    assertTrue(people("/times").contains("with Father Cosmas Ilverton"));
  }

  @Test
  void a_program_reads_the_week_without_sign_in_and_publishes_with_the_right_to() {
    LettingIn.nobody()
        .get("/api/times?week=2026-12-08")
        .then()
        .statusCode(200)
        .body("masses", empty())
        .body("published", nullValue());
    LettingIn.program(letting.token(letting.user(Role.READER)))
        .body(Map.of())
        .post("/api/times")
        .then()
        .statusCode(403);
    Sending.post("/api/times", Map.of("weeks", 99)).then().statusCode(400);

    Sending.post("/api/times", Map.of("weeks", 3))
        .then()
        .statusCode(200)
        .body("publishedDays", contains("2026-11-30", "2026-12-20"));

    LettingIn.nobody()
        .get("/api/times?week=2026-12-08&church=sa&lang=es")
        .then()
        .statusCode(200)
        .body("from", equalTo("2026-12-07"))
        .body("to", equalTo("2026-12-13"))
        .body("masses.church", everyItem(equalTo("sa")))
        .body("masses.find { it.date == '2026-12-08' }.note", containsString("18:30"))
        .body("masses.celebrant", everyItem(nullValue()));
    LettingIn.nobody().get("/api/times?church=nowhere").then().statusCode(404);
  }

  @Test
  void the_bulletin_takes_the_week_as_plain_text() {
    publish("");

    Response text = LettingIn.browser().get("/times/bulletin.txt?church=ht&week=2026-12-01");

    assertEquals("text/plain;charset=UTF-8", text.contentType().replace(" ", ""));
    String words = text.asString();
    assertTrue(
        words.contains(
            "Saturday 5 December\n  08:30  Mass\n  10:30  Confirmation\n  17:00  Sunday Mass, on the evening before\n"),
        words);
    assertTrue(
        words.contains("Saturday 5 December, 10:30 Confirmation, besides the usual times."), words);
  }

  @Test
  void the_sheet_for_the_door_has_one_church_and_no_form() {
    publish("");

    String sheet = people("/times/door?church=sa&week=2026-12-08");

    Page.of(sheet).says("Mass times, Saint Anne", "18:30").keepsSilentOn("Holy Trinity");
    assertFalse(sheet.contains("/times/publish"), sheet);
  }

  @Test
  void the_calendar_for_parishioners_needs_no_key_and_is_answered_once() throws Exception {
    publish("4");

    Response feed = LettingIn.browser().get("/feeds/times.ics?church=sa");

    Calendar read = new CalendarBuilder().build(new StringReader(feed.asString()));
    assertFalse(read.validate().hasErrors(), read.validate().toString());
    assertEquals(
        Asking.list("/api/masses?from=2026-11-30&to=2026-12-27&church=sa").size(),
        read.getComponents(Component.VEVENT).size());
    LettingIn.browser()
        .header("If-None-Match", feed.header("ETag"))
        .get("/feeds/times.ics?church=sa")
        .then()
        .statusCode(304);
  }

  @Test
  void a_schedule_that_begins_within_four_weeks_is_said_to_be_short_notice() {
    Sending.post(
            "/api/patterns",
            Map.of(
                "church",
                "sm",
                "rrule",
                "FREQ=WEEKLY;BYDAY=SU",
                "starts",
                "2026-12-13",
                "time",
                "09:00"))
        .then()
        .statusCode(201);

    Browsing.page("/times")
        .says(
            "A new regular Mass time begins on Sunday 13 December, in thirteen days.",
            "four to six weeks’ notice");
  }

  @Test
  void only_who_may_publishes_and_a_wrong_number_of_weeks_changes_nothing() {
    String reader = letting.token(letting.user(Role.READER));
    LettingIn.program(reader)
        .contentType("application/x-www-form-urlencoded")
        .formParam("weeks", "8")
        .post("/times/publish")
        .then()
        .statusCode(403);

    Browsing.send("/times/publish", Map.of("weeks", List.of("99"))).is(400);

    assertTrue(people("/times").contains("No Mass times are published for this week."));
    LettingIn.browser().get("/times?church=nowhere").then().statusCode(404);
    LettingIn.browser().get("/times?week=yesterday").then().statusCode(404);
    LettingIn.browser()
        .get("/times?lang=%3Cscript%3E")
        .then()
        .statusCode(200)
        .body(not(containsString("<script>")));
  }

  private static void publish(String weeks) {
    Browsing.send("/times/publish", Map.of("weeks", List.of(weeks)))
        .leadsTo("/times?done=published");
  }

  /** As whoever has not signed in sees it. */
  private static String people(String address) {
    return LettingIn.browser().get(address).then().statusCode(200).extract().asString();
  }

  private static String inSpanish(String address) {
    return LettingIn.browser()
        .header("Accept-Language", "es")
        .get(address)
        .then()
        .statusCode(200)
        .extract()
        .asString();
  }
}
