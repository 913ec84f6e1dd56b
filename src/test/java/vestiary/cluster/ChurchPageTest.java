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
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class ChurchPageTest {

  private static final String HOSTILE = "<script>alert(\"it's\")</script> & more";
  private static final String SAINT_ANNE = "/churches/sa";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void a_church_shows_what_is_stored_of_it() {
    Map<String, List<String>> form =
        page(SAINT_ANNE).isHeaded("Saint Anne, Millferry").form(SAINT_ANNE);

    assertEquals(List.of("joachim-and-anne"), form.get("titular"));
    assertEquals(List.of("1923-10-20"), form.get("dedication"));
    assertEquals(List.of("14"), form.get("journey-ht"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"ht", "sa", "sj", "ol", "pp", "sm"})
  void a_form_sent_back_as_it_stands_changes_nothing(String slug) {
    String action = "/churches/" + slug;
    Map<String, Object> before = church(slug);
    List<Map<String, Object>> journeys = Asking.list("/api/journeys");

    send(action, page(action).form(action)).leadsTo(action + "?done=saved");

    assertEquals(before, church(slug));
    assertEquals(journeys, Asking.list("/api/journeys"));
  }

  @Test
  void a_good_form_enters_the_church_with_its_journeys() {
    Map<String, String> typed =
        Map.of(
            "slug", "st-paul",
            "name", "Saint Paul",
            "place", HOSTILE,
            "journey-ht", "33");

    send("/churches", page("/churches/new").isHeaded("A new church").form("/churches", typed))
        .leadsTo("/churches/st-paul?done=saved");

    page("/churches/st-paul?done=saved").says("Saved.");
    assertEquals(HOSTILE, church("st-paul").get("place"));
    assertEquals(List.of("33"), page("/churches/ht").form("/churches/ht").get("journey-st-paul"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          slug             | St Paul  | "St Paul" must be
          slug             |          | This is missing.
          name             |          | This is missing.
          dedication       | 1931-2-3 | "1931-2-3" is no date; write it as 2026-12-08.
          setOutMinutes    | 241      | This is 241; it must be from 0 to 240.
          clearanceMinutes | x        | "x" is no whole number.
          latitude         | north    | "north" is no number; write it as 43.0731.
          longitude        | 5        |
          journey-ht       | 0        | This is 0; it must be from 1 to 1440.
          journey-sa       | 1441     | This is 1441; it must be from 1 to 1440.
          titularName      | Our Lady of the Weir |
          """)
  void a_bad_field_keeps_all_that_was_typed_and_says_why(
      String field, String value, String sentence) {
    Map<String, String> typed =
        new HashMap<>(
            Map.of(
                "slug", "st-paul",
                "name", HOSTILE,
                "parish", HOSTILE,
                "place", HOSTILE,
                "title", HOSTILE,
                "journey-sj", "12"));
    typed.put(field, value == null ? "" : value);
    Map<String, List<String>> form = page("/churches/new").form("/churches", typed);

    var page = refusing.unchanged(() -> send("/churches", form));

    page.is(400)
        .isHeaded("A new church")
        .says("Nothing was saved; one thing below is to be put right.")
        .keeps(form, "/churches");
    if (sentence != null) {
      assertEquals(sentence, page.error(field).substring(0, sentence.length()));
    }
  }

  @Test
  void a_short_name_that_is_taken_is_said_at_its_field() {
    Map<String, List<String>> form =
        page("/churches/new").form("/churches", Map.of("slug", "ht", "name", HOSTILE));

    refusing
        .unchanged(() -> send("/churches", form))
        .is(409)
        .faults("slug", "The short name \"ht\" belongs to another church.")
        .keeps(form, "/churches");
  }

  @Test
  void whoever_looked_before_another_changed_it_is_told_and_keeps_what_was_typed() {
    Map<String, List<String>> form = page(SAINT_ANNE).form(SAINT_ANNE, Map.of("place", HOSTILE));
    Sending.put("/api/churches/sa", Sending.with(church("sa"), "place", "Millbridge"))
        .then()
        .statusCode(200);

    refusing
        .unchanged(() -> send(SAINT_ANNE, form))
        .is(409)
        .isHeaded("Saint Anne, Millbridge")
        .says("while you were at it")
        .keeps(form, SAINT_ANNE);
  }

  @Test
  void a_renamed_church_is_led_to_under_its_new_name() {
    send(SAINT_ANNE, page(SAINT_ANNE).form(SAINT_ANNE, Map.of("slug", "anne")))
        .leadsTo("/churches/anne?done=saved");

    open(SAINT_ANNE).is(404).isHeaded("Not there").links("/settings");
  }

  @Test
  void the_list_of_churches_is_on_the_page_of_settings() {
    open("/churches").leadsTo("/settings");
  }

  @Test
  void a_church_that_is_not_there_is_told_with_a_page() {
    refusing
        .unchanged(() -> send("/churches/nowhere", page(SAINT_ANNE).form(SAINT_ANNE)))
        .is(404)
        .isHeaded("Not there");
  }

  private static Map<String, Object> church(String slug) {
    return Sending.get("/api/churches/" + slug).jsonPath().getMap("");
  }
}
