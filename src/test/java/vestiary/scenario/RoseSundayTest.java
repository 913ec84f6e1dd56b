package vestiary.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Rose is wanted at four Masses of Gaudete Sunday, 12 and 13 December 2026, and the cluster has one
 * rose set.
 *
 * <p>Source: the invented scenario; common practice, no source. That rose may be worn on the third
 * Sunday of Advent: GIRM 346 f.
 */
@QuarkusTest
class RoseSundayTest {

  private static final String SATURDAY = "2026-12-12";
  private static final String SUNDAY = "2026-12-13";

  @Inject Scenario scenario;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void two_masses_at_once_share_one_rose_set() {
    Map<String, Object> clash = chasubleClash("shortage");

    assertEquals(ids(SUNDAY, "sj 08:00", "pp 08:30"), clash.get("masses"));
    assertEquals(2, clash.get("needed"));
    assertEquals(1, clash.get("available"));
    assertEquals(List.of("HT-RO1-C"), clash.get("pieces"));
  }

  @Test
  void the_set_comes_eleven_minutes_late_from_the_upper_valley() {
    Map<String, Object> clash = chasubleClash("unreachable");

    assertEquals(ids(SUNDAY, "pp 08:30", "ht 10:30"), clash.get("masses"));
    String sentence = clash.get("sentence").toString();
    // Ends 9:30, cleared 9:45, 26 minutes on the road: 10:11; set-out 30 minutes before 10:30.
    assertTrue(sentence.contains("by 10:11"), sentence);
    assertTrue(sentence.contains("eleven minutes after its set-out at 10:00"), sentence);
  }

  @Test
  void no_other_pair_of_these_masses_clashes_over_rose() {
    long overRose = rose().stream().filter(c -> c.get("pieceKind").equals("chasuble")).count();

    assertEquals(2, overRose);
  }

  @Test
  void violet_is_lawful_at_every_one_of_them() {
    for (Map<String, Object> mass : gaudete()) {
      assertEquals(List.of("violet", "rose"), mass.get("colours"), mass.toString());
      assertEquals("rose", mass.get("colour"), mass.toString());
      assertEquals("third-sunday-of-advent", mass.get("celebration"), mass.toString());
    }
    rose().forEach(c -> assertTrue(c.get("sentence").toString().contains("violet"), c.toString()));
  }

  @Test
  void violet_in_the_upper_valley_leaves_nothing_but_carriages_to_decide() {
    Map<String, Object> upperValley = Asking.mass("pp", SUNDAY + "T08:30");

    Asking.change(upperValley, Map.of("colour", "violet"));

    List<Map<String, Object>> left =
        rose().stream().filter(c -> c.get("pieceKind").equals("chasuble")).toList();
    assertEquals(1, left.size(), left.toString());
    assertEquals(ids(SUNDAY, "sj 08:00"), left.get(0).get("masses"));
    assertEquals("local", left.get(0).get("level"));
    assertEquals(List.of("HT-RO1-C"), left.get(0).get("elsewhere"));
  }

  @Test
  void the_deacon_has_no_rose_dalmatic() {
    Map<String, Object> clash =
        Asking.only(rose().stream().filter(c -> c.get("pieceKind").equals("dalmatic")).toList());

    assertEquals(ids(SUNDAY, "ht 10:30"), clash.get("masses"));
    assertEquals(1, clash.get("needed"));
    assertEquals(0, clash.get("available"));
    assertEquals("decide", clash.get("severity"));
  }

  private static List<Map<String, Object>> gaudete() {
    return List.of(
        Asking.mass("ht", SATURDAY + "T17:00"),
        Asking.mass("sj", SUNDAY + "T08:00"),
        Asking.mass("pp", SUNDAY + "T08:30"),
        Asking.mass("ht", SUNDAY + "T10:30"));
  }

  private static Map<String, Object> chasubleClash(String kind) {
    return Asking.only(
        rose().stream()
            .filter(c -> c.get("kind").equals(kind) && c.get("pieceKind").equals("chasuble"))
            .toList());
  }

  private static List<Map<String, Object>> rose() {
    return Asking.clashes(SATURDAY, SUNDAY).stream()
        .filter(c -> "rose".equals(c.get("colour")))
        .toList();
  }

  private static List<Object> ids(String date, String... churchAndTime) {
    return List.of(churchAndTime).stream()
        .map(m -> m.split(" "))
        .map(m -> Asking.mass(m[0], date + "T" + m[1]).get("id"))
        .toList();
  }
}
