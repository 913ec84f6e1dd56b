package vestiary.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Browsing.page;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/**
 * Shortages that counting clashing needs does not prove. On a green Wednesday a church has a
 * confirmation, a wedding, the Mass of the day and a funeral, each of its own colour, and pieces
 * that serve several colours; all worked by hand.
 */
@QuarkusTest
class LongerProofTest {

  private static final String DAY = "2027-01-20";
  private static final List<String> COLOURS = List.of("red", "white", "green", "violet");

  @Inject Scenario scenario;

  @BeforeEach
  void a_church_with_stoles_for_everybody() {
    scenario.empty();
    Sending.put("/api/settings", Map.of("name", "Valley")).then().statusCode(200);
    Sending.church("ht");
    for (int number = 1; number <= 4; number++) {
      piece("S" + number, "stole", COLOURS);
    }
  }

  @Test
  void what_each_piece_serves_in_turn_is_added_up() {
    piece("P", "chasuble", List.of("white", "green"));
    piece("Q", "chasuble", List.of("white", "red"));
    mass("confirmation", "red", "08:00", 235);
    mass("wedding", "white", "10:00", 175);
    mass("of-the-day", "green", "12:00", 55);

    Map<String, Object> clash = only();

    assertEquals("must", clash.get("severity"));
    assertEquals(3, clash.get("needed"));
    assertEquals(2, clash.get("available"));
    assertEquals("chains", proof(clash, "kind"));
    assertEquals(2, proof(clash, "atMost"));
    assertEquals(
        "One after another, P serves at most one and Q serves at most one of these: two together,"
            + " but three are needed.",
        proof(clash, "sentence"));
    page(address(clash))
        .says(
            "In time",
            "What each can serve at most",
            "Two together, and three are needed.",
            "Three needed, two at most can be served, one short.",
            "Checked by adding up what each can serve, not by search.")
        .keepsSilentOn("Count the two");
  }

  @Test
  void one_forced_choice_after_another_is_told_in_one_sentence_and_a_table() {
    piece("P", "chasuble", List.of("green", "violet"));
    piece("Q", "chasuble", List.of("white", "red", "violet"));
    piece("R", "chasuble", List.of("red", "green"));
    mass("confirmation", "red", "10:00", 115);
    mass("wedding", "white", "10:00", 235);
    mass("of-the-day", "green", "11:00", 115);
    mass("funeral", "violet", "12:00", 175);

    Map<String, Object> clash = only();

    assertEquals(4, clash.get("needed"));
    assertEquals(3, clash.get("available"));
    assertEquals(1, ((List<?>) clash.get("unservedMasses")).size());
    assertEquals("forced-choices", proof(clash, "kind"));
    assertEquals(3, ((List<?>) proof(clash, "choices")).size());
    page(address(clash))
        .says(
            "One choice after another",
            "nothing else can serve it",
            "so none is left for Church of ht, 12:00, in violet",
            "Four needed, three at most can be served, one short.",
            "Checked by following each choice, not by search.");
  }

  @Test
  void what_nothing_forces_is_tried_in_every_way() {
    piece("P", "chasuble", List.of("white", "green", "violet", "black"));
    piece("Q", "chasuble", List.of("white", "red", "black"));
    piece("R", "chasuble", List.of("white", "red", "green", "violet"));
    mass("confirmation", "red", "09:00", 115);
    mass("wedding", "white", "10:00", 175);
    mass("funeral", "violet", "10:00", 175);
    mass("funeral", "black", "11:00", 55);
    mass("of-the-day", "green", "12:00", 115);

    Map<String, Object> clash = only();

    assertEquals("exhaustion", proof(clash, "kind"));
    assertEquals(5, ((List<?>) proof(clash, "options")).size());
    page(address(clash))
        .says(
            "What could serve each",
            "Every way to give the three pieces to these five was tried, and each leaves one"
                + " without; any four of them can be served.",
            "Five needed, four at most can be served, one short.");
  }

  @Test
  void what_all_clashes_is_counted_in_the_api_too() {
    piece("P", "chasuble", List.of("green"));
    mass("of-the-day", "green", "10:00", 60);
    mass("of-the-day", "green", "10:30", 60);

    Map<String, Object> clash = only();

    assertEquals("all-clash", proof(clash, "kind"));
    assertEquals(
        "No piece can serve both of these, and one can serve: one short.",
        proof(clash, "sentence"));
    page(address(clash)).says("Count the two").keepsSilentOn("One choice after another");
  }

  @Test
  void more_than_a_dozen_are_counted_by_church_with_the_hours_and_not_listed() {
    piece("P", "chasuble", List.of("green"));
    Sending.mass(
        Map.of("church", "ht", "start", DAY + "T10:00", "minutes", 60, "concelebrants", 13));

    Map<String, Object> clash = only();

    assertEquals(14, clash.get("needed"));
    page(address(clash))
        .says(
            "Needed at each church",
            "Fourteen together.",
            "All fourteen are in use from 09:00 to 11:30.",
            "Fourteen needed, one that could serve, thirteen short.")
        .keepsSilentOn("Count the two", "concelebrant 13");
  }

  private static void piece(String code, String kind, List<String> colours) {
    Sending.piece(Map.of("code", code, "kind", kind, "colours", colours, "home", "ht"));
  }

  private static void mass(String kind, String colour, String start, int minutes) {
    Sending.mass(
        Map.of(
            "church",
            "ht",
            "start",
            DAY + "T" + start,
            "minutes",
            minutes,
            "mass",
            kind,
            "colour",
            colour));
  }

  private static List<Map<String, Object>> chasubles() {
    return Asking.clashes(DAY, DAY).stream()
        .filter(clash -> "chasuble".equals(clash.get("pieceKind")))
        .toList();
  }

  private static Map<String, Object> only() {
    return Asking.only(chasubles());
  }

  private static Object proof(Map<String, Object> clash, String field) {
    return ((Map<?, ?>) clash.get("proof")).get(field);
  }

  private static String address(Map<String, Object> clash) {
    return "/clashes/%s/%s".formatted(DAY, clash.get("id"));
  }
}
