package vestiary.schedule;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Page;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/** A Mass in another language says so wherever it is read, and is for who celebrates in it. */
@QuarkusTest
class LanguageOfMassTest {

  private static final String NOON = "2026-12-02T12:10";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void a_mass_in_spanish() {
    scenario.load();
    Asking.change(Asking.mass("ht", NOON), Map.of("language", "es"));
  }

  @Test
  void it_is_said_on_week_day_and_mass_times_and_asked_in_the_form() {
    assertEquals("es", Asking.mass("ht", NOON).get("language"));
    Browsing.page("/week/2026-12-02").says("in Spanish");
    Browsing.page("/day/2026-12-02").says("in Spanish");
    Browsing.page("/masses/%s/set-out".formatted(Asking.mass("ht", NOON).get("id")))
        .says("In Spanish");
    Browsing.page("/masses/" + Asking.mass("ht", NOON).get("id"))
        .says("Language", "English, as usual");
    Browsing.press("/times/publish").leadsTo("/times?done=published");
    Page.of(LettingIn.browser().get("/times?church=ht").asString()).says("Mass, in Spanish");
    Page.of(LettingIn.browser().get("/times?church=ht&lang=es").asString())
        .says("Misa, en español");
    LettingIn.browser()
        .get("/times/bulletin.txt?church=ht")
        .then()
        .body(containsString("Mass, in Spanish"));
    Page.of(LettingIn.browser().get("/times/door?church=ht").asString()).says("in Spanish");
  }

  @Test
  void the_usual_language_is_said_nowhere_and_one_that_the_cluster_lacks_is_refused() {
    Asking.change(Asking.mass("ht", NOON), Map.of("language", "en"));

    assertEquals(null, Asking.mass("ht", NOON).get("language"));
    Browsing.page("/day/2026-12-02").keepsSilentOn("in Spanish", "in English");
    Map<String, Object> mass = Asking.mass("ht", NOON);
    refusing.unfit(
        () -> Sending.put("/api/masses/" + mass.get("id"), Sending.with(mass, "language", "pl")),
        "language");
  }

  @Test
  void a_priest_who_does_not_celebrate_in_it_is_said_to() {
    String noon = Asking.mass("ht", NOON).get("id").toString();

    assertEquals(
        List.of("ambrose-tarnwick"),
        Sending.get("/api/celebrants/masses/" + noon)
            .jsonPath()
            .getList("priests.findAll { it.inItsLanguage }.priest"));
    Browsing.page("/masses/%s/celebrant".formatted(noon))
        .says("he does not celebrate in its language");

    Asking.change(Asking.mass("ht", NOON), Map.of("language", ""));

    Browsing.page("/masses/%s/celebrant".formatted(noon))
        .keepsSilentOn("he does not celebrate in its language");
  }

  @Test
  void it_counts_against_a_proposal_that_whoever_takes_it_does_not_celebrate_in_it() {
    Sending.mass(Map.of("church", "sj", "start", "2026-12-03T16:00", "language", "es"));
    assertEquals(1, otherTongues("2026-12-03"), "Father Tarnwick has another Mass that day");

    Asking.change(Asking.mass("sj", "2026-12-03T16:00"), Map.of("language", "en"));

    assertEquals(0, otherTongues("2026-12-03"));
  }

  /** What a proposal weighs fifth: Masses in a language in which their celebrant does not serve. */
  private static int otherTongues(String date) {
    return Sending.get("/api/celebrants?from=%s&to=%s".formatted(date, date))
        .jsonPath()
        .getInt("score[4]");
  }

  @Test
  void every_mass_of_a_pattern_is_in_its_language_and_a_change_reaches_those_to_come() {
    Map<String, Object> pattern =
        new HashMap<>(
            Map.of(
                "church", "sj",
                "rrule", "FREQ=WEEKLY;BYDAY=TU",
                "starts", "2026-12-01",
                "time", "06:15",
                "language", "es"));
    String id = Sending.post("/api/patterns", pattern).then().statusCode(201).extract().path("id");
    assertEquals("es", Asking.mass("sj", "2026-12-08T06:15").get("language"));
    Sending.get("/api/patterns/" + id).then().body("language", equalTo("es"));
    int version = Sending.get("/api/patterns/" + id).path("version");

    pattern.put("language", "");
    pattern.put("version", version);
    Sending.put("/api/patterns/" + id, pattern).then().statusCode(200);

    assertEquals(null, Asking.mass("sj", "2026-12-08T06:15").get("language"));
    Sending.get("/api/patterns/" + id).then().body("language", nullValue());
  }

  @Test
  void the_form_keeps_it_and_history_knows_it() {
    String id = Asking.mass("ht", NOON).get("id").toString();

    Browsing.page("/history/" + id).says("language");
  }
}
