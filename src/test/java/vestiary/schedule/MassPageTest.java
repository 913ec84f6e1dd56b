package vestiary.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.press;
import static vestiary.scenario.Browsing.send;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import vestiary.problem.FieldFault;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Page;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;

@QuarkusTest
class MassPageTest {

  private static final String HOSTILE = "<script>alert(\"it's\")</script> & more";
  private static final String NEW = "/masses/new?church=sa&date=2026-12-08";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void a_new_mass_begins_with_what_the_address_says() {
    Page page = page(NEW).isHeaded("A new Mass").links("/week/2026-12-08");

    Map<String, List<String>> form = page.form("/masses");
    assertEquals(List.of("sa"), form.get("church"));
    assertEquals(List.of("2026-12-08"), form.get("date"));
  }

  @Test
  void a_good_form_enters_the_mass_and_says_what_stands_in_its_way() {
    Page sent =
        send("/masses", page(NEW).form("/masses", Map.of("time", "12:10", "minutes", "45")));

    Map<String, Object> mass = Asking.mass("sa", "2026-12-08T12:10");
    sent.leadsTo(address(mass) + "?saved=yes");
    assertEquals(45, mass.get("minutes"));
    page(sent.wayOn())
        .isHeaded("Tuesday 8 December, 12:10, Saint Anne")
        .says("Saved. Nothing stands in its way.");
  }

  @Test
  void whoever_is_named_and_not_known_is_entered_and_the_page_says_so() {
    Map<String, List<String>> form =
        page(NEW).form("/masses", Map.of("time", "06:10", "celebrant", "Ambrose Tarnwik"));

    Page saved = page(send("/masses", form).wayOn());
    saved
        .says("Ambrose Tarnwik was not known, and is now entered as a priest from outside.")
        .links("/people/ambrose-tarnwik");

    String action = saved.action("/masses/[0-9a-f-]+");
    page(send(action, saved.form(action, Map.of("celebrant", "Ambrose Tarnwick"))).wayOn())
        .keepsSilentOn("was not known");
  }

  @Test
  void a_mass_that_falls_short_is_saved_and_says_so_at_once() {
    Map<String, String> typed =
        Map.of("time", "12:10", "minutes", "45", "concelebrants", "9", "note", HOSTILE);

    Page sent = send("/masses", page(NEW).form("/masses", typed));

    page(sent.wayOn()).says("Saved. Look at this:", "See why");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          church|        |             church is missing.
          date|          2026-02-30|   start "2026-02-30T12:10" is no date and time; write it as 2026-12-08T18:30.
          minutes|       4|            minutes is 4; it must be from 5 to 360.
          minutes|       an hour|      minutes "an hour" is no whole number.
          concelebrants| 201|          concelebrants is 201; it must be from 0 to 200.
          deacons|       -1|           deacons is -1; it must be from 0 to 200.
          setOutMinutes| 0|            setOutMinutes is 0; it must be from 1 to 240.
          """)
  void a_bad_field_keeps_all_that_was_typed_and_says_why_beside_it(
      String field, String value, String sentence) {
    Map<String, String> typed = new HashMap<>(hostile());
    typed.put(field, value == null ? "" : value);
    Map<String, List<String>> form = page(NEW).form("/masses", typed);

    Page page = refusing.unchanged(() -> send("/masses", form));

    page.is(400).isHeaded("A new Mass");
    String apiName = field.equals("date") ? "start" : field;
    page.says("Nothing was saved; one thing below is to be put right.")
        .faults(field, new FieldFault(apiName, sentence).besideField());
    Map<String, List<String>> kept = new HashMap<>(form);
    if (field.equals("church")) {
      kept.remove("church");
    }
    page.keeps(kept, "/masses");
  }

  @Test
  void two_things_that_are_wrong_are_told_at_once() {
    Map<String, List<String>> form =
        page(NEW).form("/masses", Map.of("time", "12:10", "minutes", "x", "deacons", "999"));

    Page page = refusing.unchanged(() -> send("/masses", form)).is(400);

    page.faults("minutes", "\"x\" is no whole number.");
    page.faults("deacons", "This is 999; it must be from 0 to 200.");
  }

  @Test
  void a_rule_that_stands_against_it_is_said_with_what_to_do() {
    Map<String, List<String>> form =
        page("/masses/new?church=sa&date=2026-12-05&time=15:00&mass=anticipated")
            .form("/masses", Map.of("minutes", "60", "note", HOSTILE));
    form.put("mass", List.of("anticipated"));

    Page page = refusing.unchanged(() -> send("/masses", form));

    page.is(422).says("An anticipated Mass begins at 16:00 or later").keeps(form, "/masses");
  }

  @Test
  void an_hour_that_no_clock_shows_is_refused_at_its_field() {
    Map<String, List<String>> form =
        page("/masses/new?church=sa&date=2027-03-14&time=02:30")
            .form("/masses", Map.of("minutes", "60"));

    refusing
        .unchanged(() -> send("/masses", form))
        .is(422)
        .says("no clock in America/Chicago shows 02:30")
        .keeps(form, "/masses");
  }

  @Test
  void a_celebration_that_the_day_does_not_have_is_refused_in_words() {
    Map<String, List<String>> form =
        page(NEW).form("/masses", Map.of("time", "12:10", "minutes", "45"));
    form.put("celebration", List.of("john-damascene"));

    refusing
        .unchanged(() -> send("/masses", form))
        .is(400)
        .says("john-damascene\" cannot be chosen for this Mass");
  }

  @Test
  void a_colour_that_is_none_is_refused_in_words() {
    Map<String, List<String>> form =
        page(NEW).form("/masses", Map.of("time", "12:10", "minutes", "45"));
    form.put("colour", List.of("blue"));

    refusing.unchanged(() -> send("/masses", form)).is(400).says("blue\" is not known");
  }

  @Test
  void a_form_sent_back_as_it_stands_changes_nothing_of_the_mass() {
    Map<String, Object> before = jubilee();
    String action = address(before);

    send(action, page(action).form(action)).leadsTo(action + "?saved=yes");

    assertEquals(before.get("start"), jubilee().get("start"));
    for (String field :
        List.of("minutes", "colour", "celebrant", "concelebrants", "deacons", "note", "mass")) {
      assertEquals(before.get(field), jubilee().get(field), field);
    }
    assertEquals(2, Asking.clashes("2026-12-08", "2026-12-08").size());
  }

  @Test
  void what_a_minister_brings_besides_chasuble_and_stole_outlives_the_form() {
    Map<String, Object> confirmation = Asking.mass("ht", "2026-12-05T10:30");
    String action = address(confirmation);

    send(action, page(action).form(action, Map.of("minutes", "110")))
        .leadsTo(action + "?saved=yes");

    assertEquals(confirmation.get("brings"), Asking.mass("ht", "2026-12-05T10:30").get("brings"));
  }

  @Test
  void a_change_is_there_and_its_consequences_are_told() {
    String action = address(jubilee());

    send(action, page(action).form(action, Map.of("concelebrants", "2")))
        .leadsTo(action + "?saved=yes");

    assertEquals(2, jubilee().get("concelebrants"));
  }

  @Test
  void whoever_looked_before_another_changed_it_is_told_and_keeps_what_was_typed() {
    String action = address(jubilee());
    Map<String, List<String>> form = page(action).form(action, Map.of("note", HOSTILE));
    Asking.change(jubilee(), Map.of("deacons", 1));

    refusing
        .unchanged(() -> send(action, form))
        .is(409)
        .says("Somebody changed this Mass while you were at it.")
        .keeps(form, action);
  }

  @Test
  void a_stale_form_stays_stale_however_often_it_is_sent() {
    String action = address(jubilee());
    Map<String, List<String>> form = page(action).form(action, Map.of("note", "Mine"));
    Asking.change(jubilee(), Map.of("deacons", 1));
    Page first = send(action, form).is(409);

    refusing.unchanged(() -> send(action, first.form(action))).is(409);
  }

  @Test
  void a_bad_change_keeps_what_was_typed_under_the_heading_of_the_mass() {
    String action = address(jubilee());
    Map<String, String> typed = new HashMap<>(hostile());
    typed.put("minutes", "900");
    Map<String, List<String>> form = page(action).form(action, typed);

    refusing
        .unchanged(() -> send(action, form))
        .is(400)
        .isHeaded("Tuesday 8 December, 18:30, Saint Anne")
        .faults("minutes", "This is 900; it must be from 5 to 360.")
        .keeps(form, action);
  }

  @Test
  void asking_the_calendar_again_saves_nothing_and_keeps_what_was_typed() {
    Map<String, List<String>> form = page(NEW).form("/masses", hostile());
    form.put("again", List.of("yes"));

    Page page = refusing.unchanged(() -> send("/masses", form));

    form.remove("again");
    page.is(200).says("The Immaculate Conception").keeps(form, "/masses");
  }

  @Test
  void a_cancelled_mass_can_be_put_back() {
    Map<String, Object> mass = jubilee();
    String action = address(mass);
    page(action).says("Cancel this Mass").keepsSilentOn("Put it back");

    press(action + "/cancellation").leadsTo(action);

    assertEquals(List.of(), Asking.clashes("2026-12-08", "2026-12-08"));
    page(action)
        .says("This Mass is cancelled. Nothing is laid out for it.", "Put it back")
        .keepsSilentOn("Cancel this Mass");

    press(action + "/restoration").leadsTo(action + "?saved=yes");

    assertEquals(mass.get("start"), jubilee().get("start"));
    page(action).says("Cancel this Mass");
  }

  @Test
  void a_cancelled_mass_is_not_changed_before_it_is_put_back() {
    String action = address(jubilee());
    Map<String, List<String>> form = page(action).form(action, Map.of("deacons", "0"));
    press(action + "/cancellation");

    refusing.unchanged(() -> send(action, form)).is(404);
  }

  @Test
  void a_mass_that_is_not_there_is_told_with_a_page() {
    for (String id : List.of("7", "00000000-0000-0000-0000-000000000000")) {
      Browsing.open("/masses/" + id).is(404).isHeaded("Not there").links("/week");
      refusing.unchanged(() -> send("/masses/" + id, Map.of())).is(404);
      refusing.unchanged(() -> press("/masses/" + id + "/cancellation")).is(404);
      refusing.unchanged(() -> press("/masses/" + id + "/restoration")).is(404);
    }
  }

  private static Map<String, String> hostile() {
    return Map.of(
        "time", "12:10",
        "minutes", "45",
        "celebrant", HOSTILE,
        "concelebrants", "3",
        "deacons", "1",
        "bringsConcelebrants", "2",
        "note", HOSTILE,
        "intention", HOSTILE);
  }

  private static Map<String, Object> jubilee() {
    return Asking.mass("sa", "2026-12-08T18:30");
  }

  private static String address(Map<String, Object> mass) {
    return "/masses/" + mass.get("id");
  }
}
