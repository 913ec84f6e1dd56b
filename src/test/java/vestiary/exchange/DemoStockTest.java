package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whom and what the lists of the invented cluster name. */
class DemoStockTest {

  @Test
  void one_cluster_of_six_churches_in_five_parishes_has_every_journey() {
    List<JourneyLine> journeys =
        DemoLists.good(
            JourneyLine.read(CsvTable.parse(DemoLists.demo("journeys"), ImportWhat.JOURNEYS)));
    ClusterLine cluster =
        DemoLists.good(
                ClusterLine.read(CsvTable.parse(DemoLists.demo("cluster"), ImportWhat.CLUSTER)))
            .get(0);

    assertEquals(DemoLists.ZONE, cluster.timeZone());
    assertEquals(Map.of("permittedWeekday", "2", "permittedSunday", "3"), cluster.settings());
    assertEquals(6, DemoLists.CHURCHES.size());
    assertEquals(5, DemoLists.CHURCHES.stream().map(ChurchLine::parish).distinct().count());
    assertEquals(6 * 5 / 2, journeys.size());
    assertTrue(
        journeys.stream()
            .allMatch(j -> DemoLists.isChurch(j.from()) && DemoLists.isChurch(j.to())));
  }

  @Test
  void twenty_one_people_serve_it() {
    Map<String, Long> roles =
        DemoLists.PEOPLE.stream()
            .collect(
                Collectors.groupingBy(
                    line -> line.person().role(), TreeMap::new, Collectors.counting()));

    assertEquals(
        Map.of(
            "priest", 6L,
            "deacon", 2L,
            "bishop", 1L,
            "administrator", 1L,
            "sacristan", 5L,
            "reader", 1L,
            "minister", 1L,
            "server", 4L),
        roles);
  }

  @ParameterizedTest
  @CsvSource({
    "ht, 4, 3, 4, 4, 1, 1, 17",
    "sa, 3, 2, 3, 2, 0, 0, 10",
    "sj, 2, 1, 2, 2, 0, 0, 7",
    "ol, 2, 1, 2, 2, 0, 0, 7",
    "pp, 1, 2, 2, 1, 0, 0, 6",
    "sm, 1, 1, 1, 1, 0, 0, 4"
  })
  void each_church_owns_its_sets(
      String church, int white, int red, int green, int violet, int rose, int black, int all) {
    assertEquals(
        List.of(white, red, green, violet, rose, black),
        List.of("W", "R", "G", "V", "RO", "B").stream()
            .map(letter -> sets(church, "[A-Z]+-" + letter + "\\d+"))
            .toList());
    assertEquals(all, sets(church, "[A-Z]+-(W|R|G|V|RO|B)\\d+"));
  }

  @Test
  void fifty_one_sets_are_a_chasuble_and_a_stole_each_of_one_colour_and_home() {
    Map<String, List<PieceLine>> sets =
        DemoLists.PIECES.stream()
            .filter(p -> p.kind().equals("chasuble") || p.kind().equals("stole"))
            .collect(Collectors.groupingBy(PieceLine::set));

    assertEquals(51, sets.size());
    for (List<PieceLine> set : sets.values()) {
      assertEquals(List.of("chasuble", "stole"), set.stream().map(PieceLine::kind).toList());
      assertEquals(set.get(0).colours(), set.get(1).colours());
      assertEquals(set.get(0).home(), set.get(1).home());
      assertEquals(set.get(0).suit(), set.get(1).suit());
    }
  }

  @Test
  void there_are_a_hundred_and_twenty_one_pieces() {
    Map<String, Long> kinds =
        DemoLists.PIECES.stream()
            .collect(Collectors.groupingBy(PieceLine::kind, Collectors.counting()));

    assertEquals(
        Map.of(
            "chasuble",
            51L,
            "stole",
            51L,
            "dalmatic",
            7L,
            "deacon-stole",
            10L,
            "cope",
            3L,
            "humeral-veil",
            2L),
        kinds);
    assertEquals(124, DemoLists.PIECES.size());
    assertTrue(DemoLists.PIECES.stream().allMatch(p -> DemoLists.isChurch(p.home())));
  }

  @Test
  void lengths_suit_and_pieces_that_stay_are_as_told() {
    assertEquals(List.of("120", "122", "122"), sizes(p -> p.code().matches("SA-W\\d-C")));
    assertEquals(List.of("132", "132", "132"), sizes(p -> p.code().matches("HT-W[123]-C")));
    assertEquals(List.of("116", "116", "116", "116"), sizes(p -> p.code().matches("SM-.*-C")));
    assertEquals(
        Set.of("HT-W1", "HT-W2", "HT-W3"),
        DemoLists.PIECES.stream()
            .filter(p -> p.suit().equals("Trinity whites"))
            .map(PieceLine::set)
            .collect(Collectors.toSet()));
    assertEquals(
        Set.of("HT-W4", "PP-R2"),
        DemoLists.PIECES.stream()
            .filter(PieceLine::staysHome)
            .map(PieceLine::set)
            .collect(Collectors.toSet()));
  }

  private int sets(String church, String code) {
    return (int)
        DemoLists.PIECES.stream()
            .filter(p -> p.home().equals(church) && p.set().matches(code))
            .map(PieceLine::set)
            .distinct()
            .count();
  }

  private List<String> sizes(Predicate<PieceLine> which) {
    return DemoLists.PIECES.stream().filter(which).map(PieceLine::size).toList();
  }
}
