package vestiary.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.press;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.put;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** What everybody wears at one Mass, and albs where a church counts them. */
@QuarkusTest
class VestureTest {

  private static final String DAY = "2026-12-09";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void each_need_has_its_wearer_its_time_its_norm_and_what_is_lawful_instead() {
    List<Map<String, Object>> needs = needs(Asking.mass("sa", "2026-12-08T18:30"));

    // GIRM 209 and 338; RS 124. The principal celebrant brings his own and asks for nothing.
    assertEquals(10, needs.size());
    assertEquals(
        Map.ofEntries(
            Map.entry("role", "concelebrant"),
            Map.entry("person", 1),
            Map.entry("kind", "chasuble"),
            Map.entry("colour", "white"),
            Map.entry("from", "2026-12-08T18:00:00-06:00"),
            Map.entry("to", "2026-12-08T20:15:00-06:00"),
            Map.entry("must", false),
            Map.entry(
                "ladder",
                List.of(
                    Map.of(
                        "step", "stole-over-alb",
                        "sentence", "stole over the alb, without a chasuble",
                        "source", "GIRM 209; RS 124"))),
            Map.entry("source", "GIRM 209; RS 124"),
            Map.entry("preferred", Map.of("shade", "", "grade", "solemn", "size", ""))),
        needs.get(0));
  }

  @Test
  void the_page_says_who_wears_what_by_which_norm() {
    page("/masses/" + Asking.mass("ht", "2026-12-05T10:30").get("id") + "/vesture")
        .isHeaded("Who wears what")
        .says(
            "Holy Trinity, Saturday 5 December, 10:30",
            "Confirmation, red. Set out by 09:30, put away by 12:45. Best are vestments meant for"
                + " solemnities.",
            "Five concelebrants",
            "Five chasubles, red. Lawful instead: stole over the alb, without a chasuble (GIRM 209;"
                + " RS 124); or a white chasuble, of necessity (RS 124).",
            "Two dalmatics, red",
            "Two deacon’s stoles, red. Nothing may stand in for them. GIRM 338; GIRM 340.",
            "The celebrant brings chasuble, stole and mitre.",
            "Albs are not counted here");
  }

  @Test
  void albs_are_wanted_by_size_where_sizes_are_known() {
    albs(3);
    Map<String, Object> mass =
        Sending.mass(
            Map.of(
                "church",
                "sa",
                "start",
                DAY + "T15:00",
                "ministers",
                List.of(Map.of("kind", "server", "count", 3, "sizes", List.of("120", "130")))));

    page("/masses/" + mass.get("id") + "/vesture")
        .says(
            "Best are vestments meant for weekdays, violet in the shade of Advent.",
            "Three servers Three albs. Lawful instead: other approved dress, without an alb (GIRM"
                + " 339). GIRM 119 and 339. Best in sizes 120 and 130.")
        .keepsSilentOn("Albs are not counted here");
  }

  @Test
  void a_deacon_who_leads_benediction_wears_his_own_kind_of_stole() {
    // GIRM 340; Holy Communion and Worship of the Eucharist 92.
    Map<String, Object> benediction =
        Sending.mass(
            Map.of(
                "church", "sa",
                "start", DAY + "T15:00",
                "mass", "benediction",
                "celebrant", "tobias-greywater"));

    assertEquals(
        List.of("deacon-stole", "cope", "humeral-veil"),
        needs(benediction).stream().map(need -> need.get("kind")).toList());
  }

  @Test
  void a_cancelled_mass_asks_for_nothing() {
    Map<String, Object> mass = Asking.mass("sa", "2026-12-08T18:30");
    press("/masses/" + mass.get("id") + "/cancellation");

    assertEquals(List.of(), needs(mass));
    page("/masses/" + mass.get("id") + "/vesture")
        .says("This Mass is cancelled; nothing is laid out.");
  }

  @Test
  void a_mass_that_is_not_there_has_no_needs() {
    refusing.notThere(() -> get("/api/masses/7/needs"));
  }

  @Test
  void albs_fall_short_once_the_church_lists_some_and_lay_ministers_may_wear_other_dress() {
    Map<String, Object> mass = servers(5);
    assertEquals(List.of(), clashes(mass));
    albs(3);

    Map<String, Object> clash = Asking.only(clashes(mass));

    assertEquals("alb", clash.get("pieceKind"));
    assertEquals("decide", clash.get("severity"));
    assertEquals(6, clash.get("needed"));
    assertEquals(3, clash.get("available"));
    assertTrue(
        clash
            .get("sentence")
            .toString()
            .startsWith(
                "Saint Anne, Wednesday 9 December, 15:00: The celebrant and five servers need albs;"
                    + " three albs can serve them."),
        clash.get("sentence").toString());
    assertTrue(
        clash
            .get("sentence")
            .toString()
            .contains("other approved dress, without an alb (GIRM 339)"),
        clash.get("sentence").toString());
  }

  @Test
  void no_other_church_is_asked_for_albs_because_one_lists_them() {
    int before = Asking.clashes("2026-11-30", "2026-12-13").size();
    Sending.piece(alb("SM-A1", "sm"));

    assertEquals(before, Asking.clashes("2026-11-30", "2026-12-13").size());
  }

  @Test
  void a_cluster_may_leave_albs_uncounted() {
    Map<String, Object> mass = servers(5);
    albs(3);

    put("/api/settings", Map.of("policies", Map.of("countAlbs", false))).then().statusCode(200);

    assertEquals(List.of(), clashes(mass));
    page("/masses/" + mass.get("id") + "/vesture").says("Albs are not counted here");
  }

  @Test
  void pontificals_are_asked_for_only_where_the_cluster_says_so_and_are_never_a_must() {
    Map<String, Object> confirmation = Asking.mass("ht", "2026-12-05T10:30");
    assertTrue(needs(confirmation).stream().noneMatch(n -> n.get("kind").equals("vimpa")));

    put("/api/settings", Map.of("policies", Map.of("pontificals", true))).then().statusCode(200);

    List<Map<String, Object>> vimpas =
        needs(confirmation).stream().filter(n -> n.get("kind").equals("vimpa")).toList();
    assertEquals(2, vimpas.size());
    Map<String, Object> clash =
        Asking.only(
            clashes(confirmation).stream()
                .filter(c -> "vimpa".equals(c.get("pieceKind")))
                .toList());
    assertEquals("decide", clash.get("severity"));
    assertTrue(
        clash
            .get("sentence")
            .toString()
            .contains("Two servers need vimpas; the cluster has none for them."),
        clash.get("sentence").toString());
  }

  private static Map<String, Object> servers(int number) {
    return Sending.mass(
        Map.of(
            "church",
            "sa",
            "start",
            DAY + "T15:00",
            "minutes",
            30,
            "ministers",
            List.of(Map.of("kind", "server", "count", number))));
  }

  private static void albs(int number) {
    IntStream.rangeClosed(1, number).forEach(i -> Sending.piece(alb("SA-A" + i, "sa")));
  }

  private static Map<String, Object> alb(String code, String home) {
    return new HashMap<>(Map.of("code", code, "kind", "alb", "size", "130", "home", home));
  }

  private static List<Map<String, Object>> needs(Map<String, Object> mass) {
    return Asking.list("/api/masses/" + mass.get("id") + "/needs");
  }

  private static List<Map<String, Object>> clashes(Map<String, Object> mass) {
    String day = mass.get("start").toString().substring(0, 10);
    return Asking.clashes(day, day).stream()
        .filter(c -> ((List<?>) c.get("masses")).contains(mass.get("id")))
        .toList();
  }
}
