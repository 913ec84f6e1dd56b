package vestiary.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class PersonResourceTest {

  @Inject Scenario scenario;

  @Test
  void an_empty_cluster_knows_nobody() {
    scenario.empty();

    assertEquals(List.of(), Asking.list("/api/people"));
  }

  @Test
  void everybody_of_the_scenario_is_listed_by_surname() {
    scenario.load();

    List<Map<String, Object>> people = Asking.list("/api/people");

    assertEquals(21, people.size());
    assertEquals("Anna K.", people.get(0).get("name"));
    assertEquals("Bram Cattermoor", people.get(1).get("name"));
    assertEquals("Leander Wexcombe", people.get(20).get("name"));
    assertTrue(
        people.contains(
            Map.of(
                "slug",
                "aldous-fenwarden",
                "name",
                "Aldous Fenwarden",
                "title",
                "Bishop",
                "role",
                "bishop",
                "visiting",
                true,
                "minor",
                false,
                "churches",
                List.of(),
                "languages",
                List.of(),
                "days",
                List.of())),
        people.toString());
  }

  @Test
  void a_celebrant_nobody_knows_yet_is_entered_as_a_visiting_priest() {
    scenario.empty();
    Sending.church("ht");

    Sending.mass(
        Map.of("church", "ht", "start", "2026-12-08T18:30", "celebrant", "Anselm Brightwater"));

    assertEquals(
        Map.of(
            "slug",
            "anselm-brightwater",
            "name",
            "Anselm Brightwater",
            "title",
            "",
            "role",
            "priest",
            "visiting",
            true,
            "minor",
            false,
            "churches",
            List.of(),
            "languages",
            List.of(),
            "days",
            List.of()),
        Asking.only(Asking.list("/api/people")));
  }

  @Test
  void one_person_is_known_by_slug_name_name_with_title_and_surname() {
    scenario.load();

    for (String called :
        List.of("ambrose-tarnwick", "Ambrose Tarnwick", "Fr Ambrose Tarnwick", "tarnwick")) {
      assertEquals(
          "ambrose-tarnwick",
          Sending.mass(Map.of("church", "ht", "start", "2026-12-10T18:30", "celebrant", called))
              .get("celebrant"));
    }
    assertEquals(21, Asking.list("/api/people").size());
  }
}
