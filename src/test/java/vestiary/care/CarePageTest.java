package vestiary.care;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.press;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.photo.Photographs;
import vestiary.scenario.Browsing;
import vestiary.scenario.Page;
import vestiary.scenario.Planning;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** Something is wrong with a piece; it is noon (UTC) on 30 November 2026. */
@QuarkusTest
class CarePageTest {

  private static final String FORM = "/care/HT-W1-C";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void a_piece_is_put_in_care_comes_back_and_that_is_undone() {
    Page put = page(send(Map.of("kind", "stain", "reason", "Wine at the hem")).wayOn());

    put.says("is in care", "It is taken out of the pool.", "Stained: Wine at the hem");
    Page back = page(press(put.action(FORM + "/[0-9a-f-]+/end")).wayOn());
    back.says("It is back.", "Undo");
    page("/care").keepsSilentOn("HT-W1-C");

    page(press(back.action(FORM + "/[0-9a-f-]+/reopen")).wayOn()).says("It is in care as before.");
    page("/care").says("HT-W1-C", "Stained: Wine at the hem");
  }

  @Test
  void a_cleaner_has_fourteen_days_where_nobody_says_how_long() {
    page(send(Map.of("kind", "cleaner")).wayOn())
        .says("At the cleaner, 30 November to 14 December 2026.");
  }

  @Test
  void the_whole_set_goes_with_it_and_a_photograph_of_the_damage() {
    Map<String, List<String>> form =
        page(FORM)
            .says("The rest of the set goes with it: HT-W1-S", "no people in the picture")
            .form(FORM, Map.of("kind", "mending", "whole", "true"));

    Page done = page(Browsing.sendWithFile(FORM, form, "photo", Photographs.jpeg()).wayOn());

    assertEquals(1, done.addresses("/vestments/HT-W1-C/photos/.+").size());
    Sending.get("/api/pieces/HT-W1-S").then().body("care[0].kind", equalTo("mending"));
    Sending.get("/api/pieces/HT-W1-C/photos").then().body("", hasSize(1));
  }

  @Test
  void another_photograph_of_the_damage_can_follow() {
    String away = send(Map.of("kind", "stain")).wayOn();
    Map<String, List<String>> form = page(away).form("/vestments/HT-W1-C/photos");

    Browsing.sendWithFile("/vestments/HT-W1-C/photos", form, "photo", Photographs.png())
        .leadsTo("/vestments/HT-W1-C/photos?done=added");

    assertEquals(1, page(away).addresses("/vestments/HT-W1-C/photos/.+").size());
    Sending.get("/api/pieces/HT-W1-C/photos")
        .then()
        .body("[0].care", equalTo(away.replaceAll(".*/|[?].*", "")));
  }

  @Test
  void what_is_no_photograph_changes_nothing() {
    Map<String, List<String>> form = page(FORM).form(FORM, Map.of("kind", "stain"));

    refusing
        .unchanged(() -> Browsing.sendWithFile(FORM, form, "photo", Photographs.heic()))
        .is(400)
        .says("This is a HEIC picture");
  }

  @Test
  void other_things_need_a_word() {
    Map<String, List<String>> form = page(FORM).form(FORM, Map.of("kind", "other"));

    refusing
        .unchanged(() -> Browsing.sendWithFile(FORM, form, "photo", new byte[0]))
        .is(400)
        .faults("reason", "This is missing.");
  }

  @Test
  void what_came_back_today_can_be_found_damaged_today() {
    Page first = page(send(Map.of("kind", "stain")).wayOn());
    press(first.action(FORM + "/[0-9a-f-]+/end"));

    page(send(Map.of("kind", "missing-button")).wayOn()).says("A button is missing");
  }

  @Test
  void the_masses_that_lose_it_are_named_and_the_plan_is_made_anew_from_there() {
    Map<String, Object> plan = Planning.applied("2026-12-07", "2026-12-13");
    String worn =
        Planning.list(plan, "assignments").stream()
            .map(one -> one.get("piece").toString())
            .filter(code -> code.startsWith("HT-W"))
            .findFirst()
            .orElseThrow();

    Page put =
        page(
            send("/care/" + worn, Map.of("kind", "mending", "from", "2026-12-01"), new byte[0])
                .wayOn());

    put.says("December 2026, ", "lose", "The plan that holds no longer fits.");
    put.says("Plan anew what this touches");
  }

  @Test
  void what_it_broke_stands_again_when_it_is_back_in_time() {
    String mass = Sending.mass("ht", "2026-12-09T15:00").get("id").toString();
    String held = held("HT-W1", mass);
    Page put = page(send(Map.of("kind", "stain")).wayOn());
    Sending.get("/api/reservations/" + held).then().body("lost", contains("HT-W1-C"));

    Page back = page(press(put.action(FORM + "/[0-9a-f-]+/end")).wayOn());

    Sending.get("/api/reservations/" + held)
        .then()
        .body("lost", nullValue())
        .body("pieces", contains("HT-W1-C", "HT-W1-S"));
    press(back.action(FORM + "/[0-9a-f-]+/reopen"));
    Sending.get("/api/reservations/" + held).then().body("lost", contains("HT-W1-C"));
  }

  @Test
  void what_was_given_up_meanwhile_does_not_stand_again() {
    String mass = Sending.mass("ht", "2026-12-09T15:00").get("id").toString();
    String held = held("HT-W1", mass);
    Page put =
        page(send(Map.of("kind", "stain", "from", "2026-12-01", "to", "2026-12-20")).wayOn());
    Sending.delete("/api/reservations/" + held).then().statusCode(204);

    press(put.action(FORM + "/[0-9a-f-]+/end"));

    Sending.get("/api/reservations?mass=" + mass).then().body("", empty());
    Sending.get("/api/reservations/" + held).then().body("state", equalTo("released"));
  }

  @Test
  void what_should_be_back_is_late_and_away_until_somebody_says_so() {
    send(Map.of("kind", "mending", "from", "2026-11-20", "to", "2026-11-27"));

    page("/care").says("It should have been back by 27 November 2026.", "one is late");
    Sending.get("/api/pieces/HT-W1-C")
        .then()
        .body("care[0].late", equalTo(true))
        .body("care[0].to", equalTo(null));
  }

  private static String held(String set, String mass) {
    return Sending.post("/api/reservations", Map.of("set", set, "mass", mass))
        .then()
        .statusCode(201)
        .extract()
        .path("id");
  }

  private static Page send(Map<String, String> typed) {
    return send(FORM, typed, new byte[0]);
  }

  private static Page send(String address, Map<String, String> typed, byte[] photo) {
    return Browsing.sendWithFile(address, page(address).form(address, typed), "photo", photo);
  }
}
