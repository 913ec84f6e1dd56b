package vestiary.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Browsing;
import vestiary.scenario.Page;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/** People are entered and changed with what they serve; of children little is kept and told. */
@QuarkusTest
class PeopleKeptTest {

  private static final String CHANGE = "/people/cosmas-ilverton/change";

  @Inject Scenario scenario;
  @Inject LettingIn letting;
  @Inject ReadMinistries ministries;
  @Inject FindPeople people;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void whoever_opened_the_form_before_another_changed_the_person_overwrites_nothing() {
    Map<String, List<String>> early =
        Browsing.page(CHANGE).form(CHANGE, Map.of("wishes", "No early Masses"));
    Map<String, List<String>> late =
        Browsing.page(CHANGE).form(CHANGE, Map.of("wishes", "No late Masses"));
    Browsing.send(CHANGE, early).leadsTo("/people/cosmas-ilverton?done=saved");

    Page overtaken = Browsing.send(CHANGE, late).is(409);

    overtaken.says("Somebody changed this person while you were at it.");
    assertEquals(List.of("No late Masses"), overtaken.form(CHANGE).get("wishes"));
    Browsing.send(CHANGE, overtaken.form(CHANGE)).is(409);
    Browsing.page("/people/cosmas-ilverton").says("No early Masses");
    Browsing.send(CHANGE, Browsing.page(CHANGE).form(CHANGE, Map.of("wishes", "No late Masses")))
        .leadsTo("/people/cosmas-ilverton?done=saved");
  }

  @Test
  void what_is_typed_in_the_form_is_read_on_the_page_and_by_programs() {
    Map<String, List<String>> typed =
        Map.ofEntries(
            Map.entry("name", List.of("Cosmas Ilverton")),
            Map.entry("title", List.of("Fr")),
            Map.entry("role", List.of("priest")),
            Map.entry("churches", List.of("ht", "sa")),
            Map.entry("days", List.of("monday", "sunday")),
            Map.entry("languages", List.of("Spanish, english; pl")),
            Map.entry("mostADay", List.of("2")),
            Map.entry("wishes", List.of("No evening Mass before an early one")),
            Map.entry("ownSet", List.of("White, wide cut")),
            Map.entry("permittedWeekday", List.of("2")),
            Map.entry("permittedSunday", List.of("3")),
            Map.entry("grantedBy", List.of("the bishop")),
            Map.entry("grantedOn", List.of("2026-05-03")));

    Browsing.send(CHANGE, typed).leadsTo("/people/cosmas-ilverton?done=saved");

    Browsing.page("/people/cosmas-ilverton")
        .says(
            "Holy Trinity and Saint Anne",
            "Mondays and Sundays",
            "Spanish, English and Polish",
            "No evening Mass before an early one",
            "White, wide cut",
            "two on a weekday, three on Sundays and holy days; granted by the bishop on 3 May 2026");
    Map<String, Object> body = Sending.get("/api/people/cosmas-ilverton").jsonPath().getMap("");
    assertEquals(List.of("ht", "sa"), body.get("churches"));
    assertEquals(List.of("es", "en", "pl"), body.get("languages"));
    assertEquals(List.of("monday", "sunday"), body.get("days"));
    assertEquals(2, body.get("mostADay"));
    Page form = Browsing.page(CHANGE);
    assertEquals(List.of("ht", "sa"), form.form(CHANGE).get("churches"));
    Browsing.page("/history/people/cosmas-ilverton").says("wishes");
  }

  @Test
  void what_a_program_does_not_say_stays_as_it_was() {
    Map<String, Object> body = Sending.get("/api/people/fintan-oakhallow").jsonPath().getMap("");
    assertEquals(1, body.get("mostADay"));

    Sending.put(
            "/api/people/fintan-oakhallow",
            Map.of(
                "name",
                "Fintan Oakhallow",
                "title",
                "Fr",
                "role",
                "priest",
                "visiting",
                false,
                "languages",
                List.of("en")))
        .then()
        .statusCode(200);

    Map<String, Object> after = Sending.get("/api/people/fintan-oakhallow").jsonPath().getMap("");
    assertEquals(Sending.with(body, "languages", List.of("en")), after);
  }

  @Test
  void wishes_and_permission_are_told_to_those_who_plan() {
    for (Role role : Role.values()) {
      String token = letting.token(letting.user(role, "ht"));
      String answer = LettingIn.program(token).get("/api/people/fintan-oakhallow").asString();
      boolean plans = List.of(Role.ADMINISTRATOR, Role.SACRISTAN, Role.PASTOR).contains(role);
      assertEquals(plans, answer.contains("At most one Mass a day"), role.id());
      String history =
          LettingIn.program(token).accept("*/*").get("/history/people/fintan-oakhallow").asString();
      assertFalse(history.contains("At most one Mass") && !plans, role.id());
    }
  }

  @Test
  void what_cannot_be_is_said_beside_its_field_and_nothing_is_changed() {
    String rows = scenario.rows();
    Map<String, List<String>> typed =
        Map.of(
            "name", List.of(""),
            "role", List.of("priest"),
            "languages", List.of("Klingonish"),
            "mostADay", List.of("12"));

    Page again = Browsing.send(CHANGE, typed).is(400);

    again.keeps(typed, CHANGE).says("three things below are to be put right");
    assertTrue(again.error("languages").contains("Klingonish"));
    Browsing.send(CHANGE, Map.of("name", List.of("A B"), "mostADay", List.of("many"))).is(400);
    Sending.put(
            "/api/people/cosmas-ilverton",
            Map.of("name", "Cosmas Ilverton", "churches", List.of("nowhere")))
        .then()
        .statusCode(400);
    assertEquals(rows, scenario.rows());
  }

  @Test
  void two_of_one_name_are_two() {
    Map<String, Object> body = Map.of("name", "Odo Larkspire", "role", "server");

    String first = Sending.post("/api/people", body).then().statusCode(201).extract().path("slug");

    assertEquals("odo-larkspire-2", first);
  }

  @Test
  void of_a_child_everybody_reads_the_first_name_and_an_initial() {
    Map<String, Object> body =
        Map.of(
            "name", "Wilmot Ashgrove",
            "role", "server",
            "minor", true,
            "responsible", "His mother, Petra",
            "churches", List.of("sa"));

    Map<String, Object> kept =
        Sending.post("/api/people", body).then().statusCode(201).extract().jsonPath().getMap("");

    assertEquals("wilmot-a", kept.get("slug"));
    assertEquals("Wilmot A.", kept.get("name"));
    assertEquals("Wilmot Ashgrove", kept.get("wholeName"));
    String token = letting.token(letting.user(Role.READER));
    String told = LettingIn.program(token).get("/api/people/wilmot-a").asString();
    assertFalse(told.contains("Ashgrove") || told.contains("Petra"), told);
    Browsing.page("/history").keepsSilentOn("Ashgrove", "Petra");
  }

  @Test
  void somebody_who_turns_out_to_be_a_child_loses_the_telling_address_and_the_mail() {
    Sending.put("/api/people/odo-larkspire/mail", Map.of("address", "odo@home.example"))
        .then()
        .statusCode(204);

    Sending.put(
            "/api/people/odo-larkspire",
            Map.of("name", "Odo Larkspire", "role", "reader", "minor", true, "responsible", "Ida"))
        .then()
        .statusCode(200);

    Sending.get("/api/people/odo-larkspire").then().statusCode(404);
    Sending.get("/api/people/odo-l").then().statusCode(200);
    assertFalse(scenario.rows().contains("odo@home.example"));

    Sending.put("/api/people/odo-l", Map.of("name", "Odo L.", "role", "reader", "minor", false))
        .then()
        .statusCode(200);

    assertEquals("Odo Larkspire", Sending.get("/api/people/odo-l").path("name"));
  }

  @Test
  void how_a_child_is_reached_is_kept_nowhere() {
    String rows = scenario.rows();

    Sending.put("/api/people/tamsin-q/mail", Map.of("address", "t@home.example"))
        .then()
        .statusCode(422);
    Map<String, Object> child =
        Map.of("name", "Tamsin Quillfeather", "role", "server", "minor", true);
    for (String contact : List.of("Ines, 0171 555 0133", "ines@home.example", "")) {
      Sending.put("/api/people/tamsin-q", Sending.with(child, "responsible", contact))
          .then()
          .statusCode(400);
    }
    Sending.post(
            "/api/users", Map.of("login", "t", "name", "T", "role", "reader", "person", "tamsin-q"))
        .then()
        .statusCode(400);
    Sending.put("/api/people/tamsin-q", Sending.with(child, "role", "priest"))
        .then()
        .statusCode(400);

    assertEquals(rows, scenario.rows());
    Browsing.page("/people/tamsin-q/change")
        .says("check what the safeguarding norms of your diocese and the law of your country ask");
  }

  @Test
  void others_ask_for_what_a_priest_serves_by_his_id() {
    scenario.within(
        scenario.ours(),
        () -> {
          Ministry known = ministries.all().get(people.get("fintan-oakhallow").id());
          assertEquals(1, known.mostADay());
          assertEquals(List.of("en", "pl"), known.languages());
          assertTrue(known.findPermission().isEmpty());
        });
  }
}
