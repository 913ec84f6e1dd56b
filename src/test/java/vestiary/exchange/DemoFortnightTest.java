package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import vestiary.calendar.Colour;

/** The great liturgies of the invented cluster, on fixed dates and in whatever fortnight comes. */
class DemoFortnightTest {

  private static final LocalDate MONDAY = LocalDate.of(2026, 11, 30);

  @Test
  void the_churches_of_the_scenario_are_those_of_the_demo_with_plain_dates() {
    assertEquals(
        DemoLists.CHURCHES,
        DemoLists.good(
            ChurchLine.read(
                CsvTable.parse(DemoLists.scenario("churches"), ImportWhat.CHURCHES),
                DateWords.ISO)));
  }

  @Test
  void the_fixed_fortnight_names_known_people_churches_sets_and_regular_masses() {
    List<MassLine> masses =
        DemoLists.good(
            MassLine.read(
                CsvTable.parse(DemoLists.scenario("masses"), ImportWhat.MASSES), DateWords.ISO));
    List<CareLine> care =
        DemoLists.good(
            CareLine.read(
                CsvTable.parse(DemoLists.scenario("care"), ImportWhat.CARE), DateWords.ISO));

    assertEquals(16, masses.size());
    assertTrue(masses.stream().allMatch(m -> isWithinFortnight(m.date(), MONDAY)));
    masses.forEach(this::assertKnown);
    care.forEach(this::assertKnown);
    assertReplaced(masses);
  }

  @Test
  void three_concelebrants_meet_two_white_sets_on_8_december_2026() {
    LocalDate day = LocalDate.of(2026, 12, 8);
    MassLine jubilee =
        masses("sa", day).stream().filter(m -> m.minutes() == 90).findFirst().orElseThrow();

    assertEquals(3, jubilee.concelebrants());
    assertEquals(List.of("chasuble", "stole"), jubilee.brings().get(0).kinds());
    assertEquals(
        List.of("SA-W1", "SA-W2"),
        whiteSets(day).stream().filter(s -> s.startsWith("SA")).toList());
    assertEquals(11, whiteSets(day).size());
  }

  @Test
  void the_third_white_set_is_back_the_day_after_its_last_day_away() {
    assertTrue(whiteSets(LocalDate.of(2026, 12, 12)).contains("SA-W3"));
    assertFalse(whiteSets(LocalDate.of(2026, 12, 11)).contains("SA-W3"));
  }

  @ParameterizedTest
  @CsvSource({"2026-11-30, 11", "2027-03-01, 11", "2026-07-06, 7"})
  void the_coming_fortnight_has_its_great_liturgies_and_rose_only_where_it_falls(
      LocalDate monday, int count) {
    DateWords words = new FortnightWords(monday, DemoFortnightTest::seasonal);

    List<MassLine> masses =
        DemoLists.good(
            MassLine.read(CsvTable.parse(DemoLists.demo("masses"), ImportWhat.MASSES), words));
    List<CareLine> care =
        DemoLists.good(
            CareLine.read(CsvTable.parse(DemoLists.demo("care"), ImportWhat.CARE), words));

    assertEquals(count, masses.size());
    assertTrue(masses.stream().allMatch(m -> isWithinFortnight(m.date(), monday)));
    masses.forEach(this::assertKnown);
    care.forEach(this::assertKnown);
    assertEquals(monday.plusDays(11), care.get(0).to());
    OutLine out =
        DemoLists.good(OutLine.read(CsvTable.parse(DemoLists.demo("out"), ImportWhat.OUT), words))
            .get(0);
    assertEquals(monday.minusDays(3), out.due());
    assertTrue(
        DemoLists.PIECES.stream().anyMatch(piece -> piece.code().equals(out.piece())),
        out.toString());
  }

  /** Advent III and Lent IV are rose (GIRM 346); 13 December 2026 and 7 March 2027. */
  private static List<Colour> seasonal(LocalDate day, String church) {
    Set<LocalDate> roseSundays = Set.of(LocalDate.of(2026, 12, 13), LocalDate.of(2027, 3, 7));
    boolean isGreen = day.getMonthValue() > 5 && day.getMonthValue() < 11;
    return roseSundays.contains(day)
        ? List.of(Colour.VIOLET, Colour.ROSE)
        : List.of(isGreen ? Colour.GREEN : Colour.VIOLET);
  }

  private void assertKnown(MassLine mass) {
    Set<String> keys =
        DemoLists.PEOPLE.stream().map(line -> line.person().slug()).collect(Collectors.toSet());
    assertTrue(DemoLists.isChurch(mass.church()), mass.toString());
    assertTrue(keys.contains(mass.celebrant()), mass.toString());
  }

  private void assertKnown(CareLine care) {
    Set<String> codes = new HashSet<>(Set.of(""));
    DemoLists.PIECES.forEach(p -> codes.addAll(List.of(p.code(), p.set())));
    assertTrue(codes.contains(care.piece()) && codes.contains(care.set()), care.toString());
  }

  private void assertReplaced(List<MassLine> masses) {
    for (MassLine mass : masses) {
      long regular =
          DemoLists.PATTERNS.stream()
              .filter(p -> p.church().equals(mass.church()))
              .filter(p -> mass.replaces().contains(p.time()))
              .filter(p -> !DemoLists.starts(p, mass.date(), mass.date().plusDays(1)).isEmpty())
              .count();
      assertEquals(mass.replaces().size(), regular, mass.toString());
    }
  }

  private static boolean isWithinFortnight(LocalDate date, LocalDate monday) {
    long days = ChronoUnit.DAYS.between(monday, date);
    return days >= 0 && days < 14;
  }

  private static List<MassLine> masses(String church, LocalDate day) {
    return DemoLists.good(
            MassLine.read(
                CsvTable.parse(DemoLists.scenario("masses"), ImportWhat.MASSES), DateWords.ISO))
        .stream()
        .filter(m -> m.church().equals(church) && m.date().equals(day))
        .toList();
  }

  /** Sets that may serve as white, the gold one included, less those away on that day. */
  private static List<String> whiteSets(LocalDate day) {
    Set<String> away =
        DemoLists.good(
                CareLine.read(
                    CsvTable.parse(DemoLists.scenario("care"), ImportWhat.CARE), DateWords.ISO))
            .stream()
            .filter(c -> !day.isBefore(c.from()) && !day.isAfter(c.to()))
            .map(CareLine::set)
            .collect(Collectors.toSet());
    return DemoLists.PIECES.stream()
        .filter(p -> p.kind().equals("chasuble") && p.colours().contains("white"))
        .map(PieceLine::set)
        .filter(set -> !away.contains(set))
        .toList();
  }
}
