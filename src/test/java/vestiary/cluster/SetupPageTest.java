package vestiary.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Browsing.open;
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
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class SetupPageTest {

  private static final String SETUP = "/setup";
  private static final Map<String, String> GOOD =
      Map.of(
          "name", "Wenlow \"Valley\" & <b>",
          "calendar", "us",
          "timeZone", "America/Denver",
          "ascension", "thursday");

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void a_cluster_that_nobody_has_set_up() {
    scenario.empty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/week",
        "/week/2026-12-07",
        "/day",
        "/clashes",
        "/vestments",
        "/settings",
        "/masses/new"
      })
  void every_page_leads_to_where_that_is_done(String address) {
    open(address).leadsTo(SETUP);
  }

  @Test
  void lists_churches_and_the_api_are_open_before() {
    page("/import");
    page("/churches/new");
    page("/problems/not-there");
    Sending.get("/api/churches").then().statusCode(200);
  }

  @Test
  void the_page_asks_for_the_calendar_and_leads_nowhere_else() {
    page(SETUP).isHeaded("A new cluster").keepsSilentOn("Vestments", "Clashes");
  }

  @Test
  void a_good_form_sets_the_cluster_up_and_leads_to_its_first_church() {
    Map<String, List<String>> form = page(SETUP).form(SETUP, GOOD);
    form.put("next", List.of("church"));

    send(SETUP, form).leadsTo("/churches/new");

    Map<String, Object> settings = Sending.get("/api/settings").jsonPath().getMap("");
    GOOD.forEach((field, value) -> assertEquals(value, settings.get(field), field));
    page("/week");
    open(SETUP).leadsTo("/settings");
  }

  @Test
  void whoever_has_lists_is_led_to_the_import() {
    Map<String, List<String>> form = page(SETUP).form(SETUP, GOOD);
    form.put("next", List.of("import"));

    send(SETUP, form).leadsTo("/import");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          name     |              | This is missing.
          timeZone | Mars/Olympus | "Mars/Olympus" is not known; name it as in Europe/Dublin or America/Chicago.
          """)
  void a_bad_field_keeps_all_that_was_typed_and_says_why_beside_it(
      String field, String value, String sentence) {
    Map<String, String> typed = new HashMap<>(GOOD);
    typed.put(field, value == null ? "" : value);
    Map<String, List<String>> form = page(SETUP).form(SETUP, typed);

    refusing
        .unchanged(() -> send(SETUP, form))
        .is(400)
        .isHeaded("A new cluster")
        .faults(field, sentence)
        .keeps(form, SETUP);
  }

  @Test
  void a_cluster_that_is_set_up_is_not_set_up_again() {
    Sending.put("/api/settings", Map.of("name", "Valley")).then().statusCode(200);

    refusing.unchanged(() -> send(SETUP, Map.of("name", List.of("Other")))).leadsTo("/settings");
  }
}
