package vestiary.assigning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Sending.put;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.allocation.celebrant.PriestId;
import vestiary.allocation.celebrant.WhyNot;
import vestiary.planning.CheckClashes;
import vestiary.planning.Clash;
import vestiary.planning.ClashKind;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.schedule.DatedMass;

/** Who is named for more than he can serve, as the check of clashes says it. */
@QuarkusTest
class ClashesAsAdvisedTest {

  private static final String SATURDAY = "2026-12-05";
  private static final String SUNDAY = "2026-12-06";
  private static final String EVE = "2026-12-07";

  @Inject Scenario scenario;
  @Inject CheckClashes check;
  @Inject AdviseOnMass advise;

  @BeforeEach
  void the_invented_fortnight() {
    scenario.load();
  }

  @Test
  void the_third_mass_on_a_weekday_is_one_too_many_by_the_calendar_day_alone() {
    celebrates(funeral(), "fintan-oakhallow");
    concelebrate("ambrose-tarnwick");

    Map<String, Object> clash = Asking.only(limits(SATURDAY, "Tarnwick"));
    assertEquals("limit", clash.get("kind"));
    assertEquals("must", clash.get("severity"));
    assertEquals(
        List.of(id("ht", "T08:30"), id("ht", "T10:30"), id("ht", "T17:00")), clash.get("masses"));
    says(
        clash,
        "Father Ambrose Tarnwick has three Masses on Saturday 5 December, and the leave on file is for two.",
        "concelebrating counts (can. 905 § 2)",
        "If the bishop has given leave for more, enter it with Father Ambrose Tarnwick under People,"
            + " or in Settings if all have it.",
        "Counted by the liturgical day he would keep within it.");

    countBy("liturgical");

    assertEquals(List.of(), limits(SATURDAY, "Tarnwick"));
  }

  @Test
  void nobody_celebrates_a_funeral_while_he_concelebrates_elsewhere() {
    concelebrate("ambrose-tarnwick");

    Map<String, Object> clash = Asking.only(doubleBooked(SATURDAY, "Tarnwick"));
    assertEquals("must", clash.get("severity"));
    assertEquals(List.of(id("ht", "T10:30"), id("sj", "T11:00")), clash.get("masses"));
    says(
        clash,
        "Father Ambrose Tarnwick is named here and at 11:00 at Saint Joseph, and the two overlap.",
        "18 minutes away: he could begin there at 13:03 at the earliest.",
        "Father Cosmas Ilverton or Father Fintan Oakhallow could take the one at 11:00 at Saint Joseph.");
    Browsing.page("/clashes/%s/%s".formatted(SATURDAY, clash.get("id")))
        .says("the two overlap", "Who can celebrate at 11:00 at Saint Joseph")
        .links("/masses/%s/celebrant".formatted(id("sj", "T11:00")));

    celebrates(funeral(), "fintan-oakhallow");

    assertEquals(List.of(), doubleBooked(SATURDAY, "Tarnwick"));
  }

  @Test
  void a_mass_that_the_road_leaves_no_time_for_is_to_be_decided_and_said_from_when_it_would_do() {
    Map<String, Object> late = asked("sm", SUNDAY + "T14:00", "ambrose-tarnwick");
    assertEquals(List.of(), doubleBooked(SUNDAY, "Tarnwick"));

    Asking.change(late, Map.of("start", SUNDAY + "T12:00"));

    Map<String, Object> clash = Asking.only(doubleBooked(SUNDAY, "Tarnwick"));
    assertEquals("decide", clash.get("severity"));
    says(
        clash,
        "Father Ambrose Tarnwick is named here and at 12:00 at",
        "and cannot be there in time. He is here until 11:45",
        "he could begin there at 12:22 at the earliest. From 12:22 on it would do.");
  }

  @Test
  void the_eve_of_a_holy_day_is_a_second_mass_for_it_by_the_liturgical_day_alone() {
    asked("ht", EVE + "T18:00", "fintan-oakhallow");
    assertEquals(List.of(), limits(EVE, "Oakhallow"));

    countBy("liturgical");

    Map<String, Object> clash = Asking.only(limits(EVE, "Oakhallow"));
    assertEquals("limit", clash.get("kind"));
    assertEquals("decide", clash.get("severity"));
    says(
        clash,
        "Father Fintan Oakhallow has two Masses for Tuesday 8 December, and takes one a day.",
        "Counted by the calendar day he would keep within it.");
    assertEquals(List.of(clash), limits("2026-12-08", "Oakhallow"));
  }

  @Test
  void a_deacon_at_two_altars_at_once_is_found_too() {
    assists(Asking.mass("ht", SUNDAY + "T10:30"), "tobias-greywater");
    assists(Asking.mass("sa", SUNDAY + "T10:45"), "tobias-greywater");

    Map<String, Object> clash = Asking.only(doubleBooked(SUNDAY, "Greywater"));

    assertEquals("must", clash.get("severity"));
    says(clash, "Deacon Tobias Greywater is named here and at 10:45 at Saint Anne");
  }

  @Test
  void the_check_finds_exactly_what_the_advice_on_each_mass_says() {
    concelebrate("ambrose-tarnwick", "cosmas-ilverton");
    asked("sm", SUNDAY + "T09:45", "cosmas-ilverton");
    asked("ht", EVE + "T18:00", "fintan-oakhallow");
    asked("sa", EVE + "T18:45", "fintan-oakhallow");
    for (String countBy : List.of("calendar", "liturgical")) {
      countBy(countBy);
      scenario.within(scenario.ours(), this::compare);
    }
  }

  private void compare() {
    LocalDate first = LocalDate.parse("2026-11-30");
    LocalDate last = LocalDate.parse("2026-12-13");
    List<DatedMass> masses = check.load(first, last).asked();
    List<Clash> clashes = check.between(first, last);
    int cannot = 0;
    for (DatedMass mass : masses) {
      Optional<Advice.Advised> his = celebrant(mass);
      if (his.isPresent()) {
        Optional<WhyNot> why = his.get().why().stream().findFirst();
        Set<ClashKind> found = found(clashes, mass);
        String which = mass.church().slug() + " " + mass.start() + " " + why;
        boolean many = why.filter(WhyNot.TooMany.class::isInstance).isPresent();
        assertEquals(why.isPresent() && !many, found.contains(ClashKind.DOUBLE_BOOKED), which);
        assertTrue(!many || found.contains(ClashKind.LIMIT), which);
        assertTrue(why.isPresent() || found.isEmpty(), which);
        cannot += why.isPresent() ? 1 : 0;
      }
    }
    assertTrue(cannot >= 5, cannot + " are impossible");
  }

  /** What is advised on the one who is named; empty where no priest of the cluster is. */
  private Optional<Advice.Advised> celebrant(DatedMass mass) {
    return mass.findCelebrant()
        .filter(one -> mass.kind().isMass() && !mass.ministers().bishop())
        .flatMap(one -> advise.of(mass.id().value().toString()).find(new PriestId(one.id())));
  }

  private static Set<ClashKind> found(List<Clash> clashes, DatedMass mass) {
    String name = mass.findCelebrant().orElseThrow().calledName();
    return Set.copyOf(
        clashes.stream()
            .filter(clash -> clash.concerns(mass))
            .filter(clash -> clash.words().title().startsWith(name))
            .map(Clash::kind)
            .filter(kind -> kind == ClashKind.DOUBLE_BOOKED || kind == ClashKind.LIMIT)
            .toList());
  }

  private static void says(Map<String, Object> clash, String... parts) {
    for (String part : parts) {
      assertTrue(clash.get("sentence").toString().contains(part), clash.toString());
    }
  }

  private static List<Map<String, Object>> limits(String date, String surname) {
    return of("limit", date, surname);
  }

  private static List<Map<String, Object>> doubleBooked(String date, String surname) {
    return of("double-booked", date, surname);
  }

  private static List<Map<String, Object>> of(String kind, String date, String surname) {
    return Asking.clashes(date, date).stream()
        .filter(clash -> clash.get("kind").equals(kind))
        .filter(
            clash ->
                clash
                    .get("sentence")
                    .toString()
                    .matches(".*: \\w+ \\w+ " + surname + " (is|has) .*"))
        .toList();
  }

  private static void countBy(String countBy) {
    put("/api/settings", Map.of("policies", Map.of("countBy", countBy))).then().statusCode(200);
  }

  private static Map<String, Object> funeral() {
    return Asking.mass("sj", SATURDAY + "T11:00");
  }

  private static void concelebrate(String... named) {
    Asking.change(Asking.mass("ht", SATURDAY + "T10:30"), Map.of("named", List.of(named)));
  }

  private static void assists(Map<String, Object> mass, String deacon) {
    Map<String, Object> changes = new HashMap<>(Map.of("named", List.of(deacon)));
    changes.put("deacons", 1);
    Asking.change(mass, changes);
  }

  private static void celebrates(Map<String, Object> mass, String celebrant) {
    Asking.change(mass, Map.of("celebrant", celebrant));
  }

  private static Map<String, Object> asked(String church, String start, String celebrant) {
    return Sending.mass(
        Map.of("church", church, "start", start, "minutes", 60, "celebrant", celebrant));
  }

  private static String id(String church, String time) {
    return Asking.mass(church, SATURDAY + time).get("id").toString();
  }
}
