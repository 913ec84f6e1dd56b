package vestiary.pool;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
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
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Page;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** The list of vestments, and the form of a piece that it leads to. */
@QuarkusTest
class PoolPageTest {

  private static final String HOSTILE = "<script>alert(\"it's\")</script> & more";
  private static final String PIECE = "/vestments/HT-W1-C";
  private static final String LEAVE = PIECE + "/withdrawal";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void all_vestments_are_counted_and_listed() {
    long chasubles = pieces().stream().filter(p -> p.get("kind").equals("chasuble")).count();

    Page page =
        page("/vestments")
            .isHeaded("Vestments")
            .says(
                "Chasubles, by church and colour",
                "%d chasubles and %d other pieces in six churches"
                    .formatted(chasubles, pieces().size() - chasubles));

    pieces().forEach(piece -> page.links("/vestments/" + piece.get("code")));
  }

  @Test
  void an_empty_pool_says_where_to_begin() {
    scenario.empty();
    Sending.put("/api/settings", Map.of("name", "Valley")).then().statusCode(200);

    page("/vestments").says("No vestments are entered yet.").links("/vestments/new");
  }

  @Test
  void the_list_is_sifted_by_church_colour_and_kind() {
    page("/vestments?church=ht&colour=white&kind=chasuble")
        .links(PIECE)
        .keepsSilentOn("SA-W1-C", "HT-W1-S");
  }

  @ParameterizedTest
  @CsvSource({"church=nowhere", "colour=blue", "kind=hat", "church=%3Cscript%3E"})
  void a_sieve_that_is_none_still_answers_a_page(String query) {
    page("/vestments?" + query).isHeaded("Vestments");
  }

  @Test
  void a_good_form_enters_the_piece() {
    Map<String, String> typed =
        Map.of("code", "HT-NEW", "kind", "chasuble", "colour", "white", "place", HOSTILE);
    Map<String, List<String>> form =
        page("/vestments/new?church=ht").isHeaded("A new piece").form("/vestments", typed);

    send("/vestments", form).leadsTo("/vestments/HT-NEW?done=saved");

    page("/vestments/HT-NEW?done=saved").isHeaded("Chasuble HT-NEW").says("Saved.");
    Map<String, Object> piece = Sending.get("/api/pieces/HT-NEW").jsonPath().getMap("");
    assertEquals("ht", piece.get("home"));
    assertEquals(HOSTILE, piece.get("place"));
    assertEquals(List.of("white"), piece.get("colours"));
  }

  @Test
  void a_form_sent_back_as_it_stands_changes_nothing_of_any_piece() {
    for (Map<String, Object> before : pieces().subList(0, 12)) {
      String action = "/vestments/" + before.get("code");

      send(action, page(action).form(action)).leadsTo(action + "?done=saved");

      Map<String, Object> after =
          Sending.get("/api/pieces/" + before.get("code")).jsonPath().getMap("");
      assertEquals(before, after);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          code   |         | This is missing.
          code   | a b     | "a b" must be of letters, digits, hyphens, dots or underscores, as in HT-W1-C.
          code   | HT-W1-C | The code "HT-W1-C" belongs to another piece.
          code   | ht-w1-c | The code "ht-w1-c" belongs to another piece.
          colour |         | This is missing; name at least what the piece is.
          suit   | Trinity | A suit is made of sets; name the set as well.
          """)
  void a_bad_field_keeps_all_that_was_typed_and_says_why_beside_it(
      String field, String value, String sentence) {
    Map<String, String> typed = new HashMap<>(hostile());
    typed.put(field, value == null ? "" : value);
    Map<String, List<String>> form = page("/vestments/new").form("/vestments", typed);
    form.put("serves", List.of("gold", "silver"));

    Page page = refusing.unchanged(() -> send("/vestments", form));

    page.is(sentence.contains("another piece") ? 409 : 400)
        .isHeaded("A new piece")
        .says("Nothing was saved; one thing below is to be put right.")
        .faults(field, sentence)
        .keeps(form, "/vestments");
  }

  @Test
  void a_kind_and_a_church_that_are_none_are_said_at_their_fields() {
    Map<String, List<String>> form = page("/vestments/new").form("/vestments", hostile());
    form.put("kind", List.of("hat"));
    form.put("home", List.of("nowhere"));

    Page page = refusing.unchanged(() -> send("/vestments", form)).is(400);

    assertTrue(page.error("kind").startsWith("\"hat\" is not known"), page.error("kind"));
    page.faults("home", "\"nowhere\" is no church of this cluster.");
  }

  @Test
  void a_bad_change_keeps_what_was_typed_under_the_heading_of_the_piece() {
    Map<String, String> typed = new HashMap<>(hostile());
    typed.put("code", "SA-W1-C");
    Map<String, List<String>> form = page(PIECE).form(PIECE, typed);

    refusing
        .unchanged(() -> send(PIECE, form))
        .is(409)
        .isHeaded("Chasuble HT-W1-C")
        .keeps(form, PIECE);
  }

  @Test
  void whoever_looked_before_another_changed_it_is_told_and_keeps_what_was_typed() {
    Map<String, List<String>> form = page(PIECE).form(PIECE, Map.of("place", HOSTILE));
    send(PIECE, page(PIECE).form(PIECE, Map.of("place", "Press 9"))).leadsTo(PIECE + "?done=saved");

    refusing
        .unchanged(() -> send(PIECE, form))
        .is(409)
        .says("Somebody changed piece HT-W1-C while you were at it.")
        .keeps(form, PIECE);
  }

  @Test
  void a_code_is_changed_and_the_browser_led_to_it() {
    send(PIECE, page(PIECE).form(PIECE, Map.of("code", "HT-NEW")))
        .leadsTo("/vestments/HT-NEW?done=saved");

    Browsing.open(PIECE).is(404).links("/vestments");
  }

  @Test
  void a_piece_is_withdrawn_from_use_and_its_page_stays() {
    Map<String, List<String>> form =
        page(PIECE)
            .says("CIC 1171", "CIC 1292")
            .form(LEAVE, Map.of("on", "2026-11-28", "reason", HOSTILE, "to", "Buried"));

    send(LEAVE, form).leadsTo(PIECE + "?done=withdrawn");

    page(PIECE + "?done=withdrawn")
        .says("It is withdrawn from use.", "Withdrawn from use on 28 November 2026", "Buried")
        .keepsSilentOn("Something is wrong with it");
    page("/vestments").keepsSilentOn("HT-W1-C");

    press(PIECE + "/return").leadsTo(PIECE + "?done=used");

    page("/vestments").says("HT-W1-C");
  }

  @Test
  void a_withdrawal_says_why_and_not_for_a_day_to_come() {
    Map<String, List<String>> form = page(PIECE).form(LEAVE, Map.of("on", "2026-12-24"));

    refusing
        .unchanged(() -> send(LEAVE, form))
        .is(400)
        .faults("reason", "This is missing.")
        .keeps(form, LEAVE);
  }

  @Test
  void a_piece_is_taken_out_of_the_list() {
    page(PIECE).says("It goes for good, and no press brings it back.");

    page(press(PIECE + "/removal").leadsTo("/vestments?done=removed").wayOn())
        .says("It is taken out of the list.");

    Browsing.open(PIECE).is(404);
  }

  @Test
  void a_piece_that_is_not_there_is_told_with_a_page() {
    String nothing = "/vestments/NOTHING";

    Browsing.open(nothing).is(404).isHeaded("Not there").links("/vestments");
    refusing.unchanged(() -> send(nothing, page(PIECE).form(PIECE, Map.of("code", "X")))).is(404);
    refusing.unchanged(() -> press(nothing + "/removal")).is(404);
    refusing.unchanged(() -> send(nothing + "/withdrawal", Map.of())).is(404);
    refusing.unchanged(() -> press(PIECE + "/return")).is(404);
  }

  private static Map<String, String> hostile() {
    return Map.of(
        "code", "HT-NEW",
        "kind", "chasuble",
        "colour", "white",
        "shade", HOSTILE,
        "form", HOSTILE,
        "size", HOSTILE,
        "owner", HOSTILE,
        "condition", HOSTILE,
        "place", HOSTILE,
        "home", "sa");
  }

  private static List<Map<String, Object>> pieces() {
    return Asking.list("/api/pieces");
  }
}
