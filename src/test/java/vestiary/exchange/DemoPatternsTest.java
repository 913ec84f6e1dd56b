package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The regular Masses of the invented cluster. */
class DemoPatternsTest {

  private static final LocalDate MONDAY = LocalDate.of(2026, 11, 30);

  @Test
  void seventeen_regular_masses_fall_in_the_week_of_30_november_2026() {
    List<ZonedDateTime> starts = regular(MONDAY);

    assertEquals(17, starts.size());
    assertEquals(
        List.of(1, 2, 2, 2, 2, 3, 5),
        starts.stream()
            .collect(
                Collectors.groupingBy(
                    s -> s.getDayOfWeek(), TreeMap::new, Collectors.summingInt(s -> 1)))
            .values()
            .stream()
            .toList());
  }

  @ParameterizedTest
  @ValueSource(strings = {"2024-12-09", "2026-03-02", "2026-12-07", "2027-10-25", "2031-07-28"})
  void every_week_has_seventeen_whatever_thursday_it_holds(LocalDate monday) {
    assertEquals(17, regular(monday).size());
  }

  @Test
  void the_clock_of_a_pattern_stays_when_summer_time_begins() {
    PatternLine sunday =
        DemoLists.PATTERNS.stream().filter(p -> p.church().equals("pp")).findFirst().orElseThrow();

    List<ZonedDateTime> starts =
        DemoLists.starts(sunday, LocalDate.of(2026, 3, 1), LocalDate.of(2026, 3, 9));

    assertEquals(
        List.of("2026-03-01T08:30-06:00", "2026-03-08T08:30-05:00"),
        starts.stream().map(s -> s.toOffsetDateTime().toString()).toList());
  }

  @Test
  void the_second_thursday_is_kept_at_the_mission() {
    assertEquals(List.of("sj"), thursdayEvening(LocalDate.of(2026, 12, 3)));
    assertEquals(List.of("sm"), thursdayEvening(LocalDate.of(2026, 12, 10)));
    assertEquals(List.of("sj"), thursdayEvening(LocalDate.of(2026, 12, 31)));
  }

  @Test
  void saturday_morning_is_taken_in_turn() {
    List<String> celebrants = new ArrayList<>();
    for (int week = 0; week < 3; week++) {
      LocalDate saturday = LocalDate.of(2026, 12, 5).plusWeeks(week);
      DemoLists.PATTERNS.stream()
          .filter(p -> p.rrule().contains("INTERVAL=2"))
          .filter(p -> !DemoLists.starts(p, saturday, saturday.plusDays(1)).isEmpty())
          .forEach(p -> celebrants.add(p.celebrant()));
    }

    assertEquals(List.of("ambrose-tarnwick", "cosmas-ilverton", "ambrose-tarnwick"), celebrants);
  }

  private List<ZonedDateTime> regular(LocalDate monday) {
    return DemoLists.PATTERNS.stream()
        .flatMap(p -> DemoLists.starts(p, monday, monday.plusDays(7)).stream())
        .toList();
  }

  private List<String> thursdayEvening(LocalDate thursday) {
    return DemoLists.PATTERNS.stream()
        .filter(p -> p.time().getHour() == 18)
        .filter(p -> !DemoLists.starts(p, thursday, thursday.plusDays(1)).isEmpty())
        .map(PatternLine::church)
        .toList();
  }
}
