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
 * Fifty years of priesthood are kept at Saint Anne on Tuesday 8 December 2026, 18:30: three
 * concelebrants, two white sets, since the third is at the cleaner.
 *
 * <p>Source: the invented scenario; common practice, no source.
 */
@QuarkusTest
class JubileeTest {

  private static final String DAY = "2026-12-08";

  @Inject Scenario scenario;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void three_concelebrants_need_white_and_two_white_sets_are_there() {
    Map<String, Object> clash = clash("chasuble");

    assertEquals("shortage", clash.get("kind"));
    assertEquals("local", clash.get("level"));
    assertEquals("decide", clash.get("severity"));
    assertEquals(3, clash.get("needed"));
    assertEquals(2, clash.get("available"));
    assertEquals(List.of("SA-W1-C", "SA-W2-C"), clash.get("pieces"));
  }

  @Test
  void eight_more_could_be_carried_there() {
    assertEquals(
        List.of(
            "HT-W1-C", "HT-W2-C", "HT-W3-C", "OL-W1-C", "OL-W2-C", "PP-W1-C", "SJ-W1-C", "SM-W1-C"),
        clash("chasuble").get("elsewhere"));
  }

  @Test
  void it_names_the_mass_and_the_time_from_set_out_to_clearance() {
    Map<String, Object> jubilee = Asking.mass("sa", DAY + "T18:30");

    Map<String, Object> clash = clash("chasuble");

    assertEquals(List.of(jubilee.get("id")), clash.get("masses"));
    assertEquals(List.of(jubilee.get("id")), clash.get("unservedMasses"));
    assertEquals(DAY + "T18:00:00-06:00", clash.get("from"));
    assertEquals(DAY + "T20:15:00-06:00", clash.get("to"));
  }

  @Test
  void its_sentence_gives_the_numbers_and_the_lawful_step() {
    String sentence = clash("chasuble").get("sentence").toString();

    assertTrue(
        sentence.startsWith(
            "Saint Anne, Tuesday 8 December, 18:30:"
                + " Three concelebrants need white; two white sets are there."),
        sentence);
    // GIRM 209, with Redemptionis Sacramentum 124: for a just cause, a stole over the alb.
    assertTrue(sentence.contains("stole over the alb"), sentence);
    assertTrue(sentence.contains("GIRM 209; RS 124"), sentence);
  }

  @Test
  void two_deacons_need_white_dalmatics_and_one_is_there() {
    Map<String, Object> clash = clash("dalmatic");

    assertEquals("local", clash.get("level"));
    assertEquals(2, clash.get("needed"));
    assertEquals(1, clash.get("available"));
    assertEquals(List.of("SA-D1"), clash.get("pieces"));
    assertEquals(List.of("HT-D1", "HT-D2"), clash.get("elsewhere"));
  }

  @Test
  void the_principal_brings_his_own_and_is_no_need() {
    Map<String, Object> jubilee = Asking.mass("sa", DAY + "T18:30");

    assertEquals("fintan-oakhallow", jubilee.get("celebrant"));
    assertEquals(
        List.of(Map.of("role", "principal", "count", 1, "kinds", List.of("chasuble", "stole"))),
        jubilee.get("brings"));
    assertEquals("immaculate-conception", jubilee.get("celebration"));
    assertEquals(List.of("white"), jubilee.get("colours"));
  }

  @Test
  void nothing_else_clashes_that_day() {
    assertEquals(2, Asking.clashes(DAY, DAY).size());
  }

  private static Map<String, Object> clash(String pieceKind) {
    return Asking.only(
        Asking.clashes(DAY, DAY).stream()
            .filter(c -> pieceKind.equals(c.get("pieceKind")))
            .toList());
  }
}
