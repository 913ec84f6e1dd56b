package vestiary.schedule;

import static org.hamcrest.Matchers.containsString;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.put;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** What the norms say of a Mass is told, not enforced: it is saved and shows a clash. */
@QuarkusTest
class MassNormsTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void one_church_with_a_set_of_each_colour() {
    scenario.empty();
    Sending.church("ht");
    for (String colour : List.of("white", "red", "green", "violet")) {
      Sending.piece("HT-%s-C".formatted(colour), "chasuble", colour, "ht");
      Sending.piece("HT-%s-S".formatted(colour), "stole", colour, "ht");
    }
  }

  @Test
  void an_unlawful_colour_is_saved_and_shows_a_clash() {
    // GIRM 346 d: violet in Advent.
    Map<String, Object> mass =
        Sending.mass(Map.of("church", "ht", "start", "2026-12-06T10:30", "colour", "red"));

    assertEquals("red", mass.get("colour"));
    assertEquals(List.of("violet"), mass.get("colours"));
    Map<String, Object> clash = Asking.only(Asking.clashes("2026-12-06", "2026-12-06"));
    assertEquals("colour", clash.get("kind"));
    assertEquals("must", clash.get("severity"));
    assertEquals(List.of(mass.get("id")), clash.get("masses"));
    assertTrue(clash.get("sentence").toString().contains("violet"), clash.toString());
  }

  @Test
  void no_mass_is_celebrated_on_good_friday() {
    // Roman Missal, Friday of the Passion of the Lord, 1; UNLY 66 and table of days, 1.
    Map<String, Object> mass =
        Sending.mass(Map.of("church", "ht", "start", "2027-03-26T08:00", "mass", "of-the-day"));

    assertEquals("not-permitted", mass.get("permission"));
    Map<String, Object> clash = Asking.only(notPermitted("2027-03-26"));
    assertEquals("must", clash.get("severity"));
    assertEquals(List.of(mass.get("id")), clash.get("masses"));
  }

  @Test
  void the_passion_is_celebrated_on_good_friday_in_red() {
    // GIRM 346 b.
    Map<String, Object> passion =
        Sending.mass(Map.of("church", "ht", "start", "2027-03-26T15:00", "mass", "good-friday"));

    assertEquals("red", passion.get("colour"));
    assertEquals(List.of(), notPermitted("2027-03-26"));
  }

  @Test
  void a_cancelled_mass_clashes_no_more() {
    Map<String, Object> mass =
        Sending.mass(Map.of("church", "ht", "start", "2026-12-06T10:30", "colour", "red"));

    delete("/api/masses/" + mass.get("id")).then().statusCode(204);

    assertEquals(List.of(), Asking.clashes("2026-12-06", "2026-12-06"));
  }

  @Test
  void the_hour_makes_a_saturday_mass_the_sundays() {
    // UNLY 3: the observance of Sunday begins with the evening of the day before.
    assertEquals("of-the-day", Sending.mass("ht", "2026-12-05T15:59").get("mass"));
    Map<String, Object> evening = Sending.mass("ht", "2026-12-05T16:00");
    assertEquals("anticipated", evening.get("mass"));
    assertEquals("second-sunday-of-advent", evening.get("celebration"));
  }

  @Test
  void what_is_said_to_be_of_the_day_stays_so_in_the_evening() {
    Map<String, Object> mass =
        Sending.mass(Map.of("church", "ht", "start", "2026-12-05T17:00", "mass", "of-the-day"));

    assertEquals("of-the-day", mass.get("mass"));
    assertEquals(List.of("mass"), mass.get("chosen"));
    assertEquals("saturday-week-1-advent", mass.get("celebration"));
  }

  @Test
  void no_mass_is_anticipated_before_four_in_the_afternoon() {
    Map<String, Object> early =
        Map.of("church", "ht", "start", "2026-12-05T15:59", "mass", "anticipated");

    refusing
        .refused(422, "against-rule", () -> post("/api/masses", early))
        .body("detail", containsString("16:00"));
  }

  @Test
  void the_hour_of_anticipation_is_the_clusters() {
    put("/api/settings", Map.of("policies", Map.of("anticipatedFrom", "12:00")))
        .then()
        .statusCode(200);

    assertEquals(
        "second-sunday-of-advent", Sending.mass("ht", "2026-12-05T12:00").get("celebration"));
  }

  @Test
  void a_wedding_is_white_and_a_funeral_may_be_violet() {
    // GIRM 346 a and e; Order of Celebrating Matrimony: festive, hence white.
    Map<String, Object> wedding =
        Sending.mass(Map.of("church", "ht", "start", "2026-12-12T14:00", "mass", "wedding"));
    Map<String, Object> funeral =
        Sending.mass(Map.of("church", "ht", "start", "2026-12-10T11:00", "mass", "funeral"));

    assertEquals("white", wedding.get("colour"));
    assertTrue(((List<?>) funeral.get("colours")).contains("violet"), funeral.toString());
  }

  private static List<Map<String, Object>> notPermitted(String date) {
    return Asking.clashes(date, date).stream()
        .filter(c -> c.get("kind").equals("not-permitted"))
        .toList();
  }
}
