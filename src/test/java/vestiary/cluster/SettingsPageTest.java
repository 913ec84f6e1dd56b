package vestiary.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Browsing.page;
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
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class SettingsPageTest {

  private static final String SETTINGS = "/settings";
  private static final String HOSTILE = "<script>alert(\"it's\")</script> & more";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void the_page_lists_the_churches_and_leads_to_each() {
    page(SETTINGS)
        .isHeaded("Settings")
        .says("Holy Trinity", "set out 30 minutes before, cleared 15 after")
        .links("/churches/ht")
        .links("/churches/new")
        .links("/propers");
  }

  @Test
  void a_form_sent_back_as_it_stands_changes_no_setting() {
    Map<String, Object> before = settings();

    send(SETTINGS, page(SETTINGS).form(SETTINGS)).leadsTo("/settings?done=saved");

    assertEquals(before, settings());
  }

  @Test
  void a_good_form_is_kept() {
    Map<String, String> typed =
        Map.of(
            "name", HOSTILE,
            "languages", "en; es; pl",
            "turnMinutes", "7",
            "permittedSunday", "4",
            "ladderOrder", "white");

    send(SETTINGS, page(SETTINGS).form(SETTINGS, typed)).leadsTo("/settings?done=saved");

    page("/settings?done=saved").says("Saved.").keeps(Map.of("name", List.of(HOSTILE)), SETTINGS);
    assertEquals(HOSTILE, settings().get("name"));
    assertEquals(List.of("en", "es", "pl"), settings().get("languages"));
    Map<?, ?> policies = (Map<?, ?>) settings().get("policies");
    assertEquals(7, policies.get("turnMinutes"));
    assertEquals(4, policies.get("permittedSunday"));
    assertEquals("white", policies.get("ladderOrder"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          name             |              | This is missing.
          timeZone         | Mars/Olympus | "Mars/Olympus" is not known; name it as in Europe/Dublin or America/Chicago.
          languages        | en, zz       | "zz" is no language; write it as en or es.
          languages        |              | "" is no language; write it as en or es.
          anticipatedFrom  | soon         | "soon" is no time of day; write it as 18:30.
          turnMinutes      | 61           | This is 61; it must be from 0 to 60.
          turnMinutes      |              | This is missing.
          weekdaySetOut    | x            | "x" is no whole number.
          largeSetOut      | 241          | This is 241; it must be from 0 to 240.
          largeClearance   | -1           | This is -1; it must be from 0 to 240.
          permittedWeekday | 0            | This is 0; it must be from 1 to 9.
          permittedSunday  | 10           | This is 10; it must be from 1 to 9.
          """)
  void a_bad_field_keeps_all_that_was_typed_and_says_why_beside_it(
      String field, String value, String sentence) {
    Map<String, String> typed = new HashMap<>(Map.of("name", HOSTILE, "largeSetOut", "99"));
    typed.put(field, value == null ? "" : value);
    Map<String, List<String>> form = page(SETTINGS).form(SETTINGS, typed);
    form.put("whiteForAll", List.of("true"));

    refusing
        .unchanged(() -> send(SETTINGS, form))
        .is(400)
        .isHeaded("Settings")
        .says("Nothing was saved; one thing below is to be put right.")
        .faults(field, sentence)
        .keeps(form, SETTINGS);
  }

  @Test
  void what_is_counted_is_ticked_and_stays_so_until_it_is_not() {
    Map<String, List<String>> form = page(SETTINGS).form(SETTINGS);
    assertEquals(List.of("true"), form.get("countAlbs"));
    form.remove("countAlbs");
    form.put("pontificals", List.of("true"));

    send(SETTINGS, form);

    Map<?, ?> policies = (Map<?, ?>) settings().get("policies");
    assertEquals(false, policies.get("countAlbs"));
    assertEquals(true, policies.get("pontificals"));
  }

  @Test
  void whoever_looked_before_another_changed_it_is_told_and_keeps_what_was_typed() {
    Map<String, List<String>> form = page(SETTINGS).form(SETTINGS, Map.of("name", HOSTILE));
    Sending.put("/api/settings", Map.of("name", "Valley")).then().statusCode(200);

    refusing
        .unchanged(() -> send(SETTINGS, form))
        .is(409)
        .says("while you were at it")
        .keeps(form, SETTINGS);
  }

  private static Map<String, Object> settings() {
    return Sending.get("/api/settings").jsonPath().getMap("");
  }
}
