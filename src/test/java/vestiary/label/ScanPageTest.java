package vestiary.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Browsing.open;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.send;
import static vestiary.scenario.Sending.post;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Page;
import vestiary.scenario.Planning;
import vestiary.scenario.Scenario;

/** What a phone shows when a label is scanned, at 06:00 on Monday 30 November 2026. */
@QuarkusTest
class ScanPageTest {

  @Inject Scenario scenario;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void it_says_what_it_is_and_where_it_belongs() {
    page("/s/ht-w2")
        .isHeaded("Chasuble and stole")
        .says("HT-W2", "white", "At Holy Trinity, Vestment press, drawer 1.")
        .links("/s/HT-W2/out");
  }

  @Test
  void it_goes_by_the_form_and_the_last_act_is_taken_back() {
    send("/s/HT-W2/out", Map.of("church", List.of("sa"), "whom", List.of("")))
        .leadsTo("/s/HT-W2?done=out");
    Page gone =
        page("/s/HT-W2?done=out").says("Out, to Saint Anne, due Thursday 3 December.", "Undo");
    send("/s/HT-W2/undo", gone.form("/s/HT-W2/undo")).leadsTo("/s/HT-W2?done=undone");

    page("/s/HT-W2").says("At Holy Trinity");
    assertEquals(List.of(), Asking.list("/api/loans?parish=saint anne"));
  }

  @Test
  void it_comes_back_by_one_press_and_that_is_taken_back_too() {
    post("/api/sets/HT-W2/out", Map.of("church", "sa")).then().statusCode(200);
    Page out = page("/s/HT-W2").says("Out at Saint Anne since Monday 30 November", "Back, at Holy");
    send("/s/HT-W2/back", out.form("/s/HT-W2/back")).leadsTo("/s/HT-W2?done=back");
    Page back = page("/s/HT-W2?done=back").says("Back, at Holy Trinity.");

    send("/s/HT-W2/undo", back.form("/s/HT-W2/undo")).leadsTo("/s/HT-W2?done=undone");

    page("/s/HT-W2").says("Out at Saint Anne since");
    send("/s/HT-W2/undo", back.form("/s/HT-W2/undo"))
        .is(409)
        .says("Something else was said of it since");
  }

  @Test
  void what_is_wanted_in_the_coming_day_goes_by_one_press() {
    Planning.applied("2026-11-30", "2026-12-06");
    Map<String, Object> mass = Asking.masses("ht", "2026-11-30").get(0);
    String set = firstPlanned(mass);

    Page wanted = page("/s/" + set).says("For ", "Out, for ");
    send("/s/%s/out".formatted(set), wanted.form("/s/%s/out".formatted(set)))
        .leadsTo("/s/%s?done=out".formatted(set));
    page("/s").says(set, "out 06:00");
  }

  private static String firstPlanned(Map<String, Object> mass) {
    return page("/s").addresses("/s/[A-Z0-9-]+").stream()
        .filter(address -> address.startsWith("/s/HT-R"))
        .findFirst()
        .orElseThrow(() -> new AssertionError("nothing is to be set out for " + mass))
        .substring(3);
  }

  @Test
  void pieces_that_are_apart_are_told_each_by_itself() {
    post("/api/pieces/HT-W2-S/out", Map.of("church", "sa")).then().statusCode(200);

    page("/s/HT-W2")
        .says("Its pieces are apart.", "HT-W2-C: At Holy Trinity", "HT-W2-S: Out at Saint Anne");
  }

  @Test
  void an_unknown_label_is_told_with_what_helps() {
    open("/s/NO-SUCH").is(404).says("has the code “NO-SUCH”", "Look whether it was typed right");
    open("/s?code=ht-w1").leadsTo("/s/ht-w1");
  }

  @Test
  void a_label_of_another_cluster_says_nothing_about_it() {
    scenario.becomeAnother();

    open("/s/HT-W2").is(404).keepsSilentOn("Holy Trinity", "chasuble");
  }

  @Test
  void what_was_typed_is_kept_when_it_cannot_go() {
    Map<String, List<String>> typed =
        Map.of(
            "church", List.of(""),
            "whom", List.of(""),
            "carrier", List.of("Greta Holm"),
            "condition", List.of("loose thread"));

    send("/s/HT-W2/out", typed)
        .is(400)
        .faults("church", "Say to which church it goes, or to whom outside the cluster.")
        .keeps(typed, "/s/HT-W2/out");
  }

  @Test
  void what_is_in_care_says_so_and_why_it_cannot_go() {
    String care =
        post(
                "/api/pieces/HT-W2-C/care",
                Map.of("from", "2026-01-02", "reason", "Wine on the front"))
            .then()
            .statusCode(201)
            .extract()
            .path("id");

    page("/s/HT-W2-C")
        .says("In care: Wine on the front, until further notice.", "say that it is back")
        .links("/care/HT-W2-C/" + care)
        .keepsSilentOn("Out, to another church");
    send("/s/HT-W2-C/out", Map.of("church", List.of("sa")))
        .is(409)
        .says("HT-W2-C is in care", "Say first that it is back.");
    send("/s/HT-W2/out", Map.of("church", List.of("sa")))
        .is(409)
        .says("or say that the set goes without it");
  }

  @Test
  void the_page_of_the_piece_says_where_it_is_and_who_had_it() {
    post("/api/sets/HT-W2/out", Map.of("church", "sa")).then().statusCode(200);
    post("/api/sets/HT-W2/back", Map.of("taker", "Martha Kell")).then().statusCode(200);

    page("/vestments/HT-W2-C")
        .says("At Holy Trinity", "taken in by Martha Kell", "Saint Anne: Monday 30 November, 06:00")
        .links("/s/HT-W2-C");
    page("/vestments/OL-D1").says("due Friday 27 November, three days overdue");
    page("/vestments").says("Out, with the cathedral, due Friday 27 November, three days overdue");
    page("/out").says("Overdue, to be asked for", "OL-D1", "the cathedral");
    page("/loans?open=open").says("OL-D1").keepsSilentOn("HT-W2");
    page("/loans").says("HT-W2-C, white chasuble; HT-W2-S, white stole", "CIC 1256");
  }
}
