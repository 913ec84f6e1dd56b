package vestiary.assigning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static vestiary.scenario.Browsing.page;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.calendar.MassKind;
import vestiary.scenario.Page;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/**
 * On the afternoon of Thursday 3 December nobody of the invented cluster has anything to do but
 * what is entered here.
 */
@QuarkusTest
class RiteStandInTest {

  private static final String DAY = "2026-12-03";
  private static final String WHEN = "Thursday 3 December, 15:00, Saint Anne, ";
  private static final String REVIEW = "/review/2026-11-30";

  @Inject Scenario scenario;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void benediction_of_a_priest_who_is_away_is_offered_to_deacons_and_priests_who_are_there() {
    // Holy Communion and Worship of the Eucharist 91: a priest or deacon.
    String id = led("cosmas-ilverton", "benediction");
    page(REVIEW).keepsSilentOn("In place of whoever is away");

    away("cosmas-ilverton");

    Page review = page(REVIEW).is(200).says("In place of whoever is away").links("/masses/" + id);
    review.says(
        "which are no Masses, is away",
        WHEN
            + "Benediction: Deacon Tobias Greywater, Deacon Lucan Pellmoor, Father Fintan Oakhallow");
  }

  @Test
  void whoever_is_away_or_elsewhere_at_that_hour_is_not_offered() {
    led("cosmas-ilverton", "benediction");
    away("cosmas-ilverton");
    away("lucan-pellmoor");
    Sending.mass(
        Map.of(
            "church",
            "ht",
            "start",
            DAY + "T14:50",
            "celebrant",
            "fintan-oakhallow",
            "deacons",
            1,
            "named",
            List.of("tobias-greywater")));

    page(REVIEW).says(WHEN + "Benediction: Father Ambrose Tarnwick could lead it");
  }

  @Test
  void nobody_is_offered_where_nobody_is_left() {
    led("cosmas-ilverton", "benediction");
    for (String person :
        List.of(
            "cosmas-ilverton",
            "fintan-oakhallow",
            "ambrose-tarnwick",
            "tobias-greywater",
            "lucan-pellmoor")) {
      away(person);
    }

    page(REVIEW).says(WHEN + "Benediction: nobody of the cluster could lead it");
  }

  @Test
  void of_a_liturgy_that_nobody_has_named_deacons_are_not_offered() {
    led("cosmas-ilverton", "other");
    away("cosmas-ilverton");

    page(REVIEW).says(WHEN).keepsSilentOn("Deacon Tobias Greywater");
  }

  @Test
  void what_a_deacon_leads_and_cannot_is_offered_too() {
    led("tobias-greywater", "baptism-outside-mass");
    away("tobias-greywater");

    page(REVIEW).says(WHEN + "baptism: ", "Deacon Lucan Pellmoor");
  }

  @Test
  void a_deacon_leads_no_mass_and_not_the_celebration_of_the_passion() {
    // Can. 900 § 1 and 943; Roman Missal, Good Friday 5.
    assertEquals(
        List.of(),
        EnumSet.allOf(MassKind.class).stream()
            .filter(kind -> kind.isMass() && kind.canBeLedByDeacon())
            .toList());
    assertFalse(MassKind.GOOD_FRIDAY.canBeLedByDeacon());
  }

  private static String led(String person, String kind) {
    return Sending.mass(
            Map.of("church", "sa", "start", DAY + "T15:00", "mass", kind, "celebrant", person))
        .get("id")
        .toString();
  }

  private static void away(String person) {
    Sending.post("/api/people/%s/absences".formatted(person), Map.of("from", DAY, "to", DAY))
        .then()
        .statusCode(201);
  }
}
