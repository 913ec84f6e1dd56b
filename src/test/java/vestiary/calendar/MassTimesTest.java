package vestiary.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;

class MassTimesTest {

  private final LiturgicalCalendar us =
      LiturgicalCalendar.of(CalendarSettings.defaultsOf("us"), List.of());

  @Test
  void a_saturday_evening_is_sundays_from_the_hour_that_is_set() {
    assertEquals(MassKind.OF_THE_DAY, kind("2026-06-20T15:59"));
    assertEquals(MassKind.ANTICIPATED, kind("2026-06-20T16:00"));
  }

  @Test
  void a_weekday_evening_before_a_weekday_is_its_own() {
    assertEquals(MassKind.OF_THE_DAY, kind("2026-06-16T19:00"));
  }

  @Test
  void the_triduum_has_its_own_liturgies() {
    assertEquals(MassKind.OF_THE_DAY, kind("2026-04-02T10:00"));
    assertEquals(MassKind.LORDS_SUPPER, kind("2026-04-02T19:00"));
    assertEquals(MassKind.GOOD_FRIDAY, kind("2026-04-03T15:00"));
    assertEquals(MassKind.EASTER_VIGIL, kind("2026-04-04T21:00"));
    assertEquals(MassKind.OF_THE_DAY, kind("2026-04-05T10:00"));
  }

  @Test
  void an_anticipated_mass_belongs_to_the_next_day() {
    assertEquals(
        LocalDate.of(2026, 6, 21), us.liturgicalDate(at("2026-06-20T17:00"), MassKind.ANTICIPATED));
    assertEquals(
        LocalDate.of(2026, 6, 20), us.liturgicalDate(at("2026-06-20T17:00"), MassKind.WEDDING));
  }

  /** UNLY 21: the Vigil begins after nightfall and ends before dawn. */
  @Test
  void a_vigil_before_dawn_belongs_to_easter_sunday_as_one_after_nightfall_does() {
    LocalDate easter = LocalDate.of(2026, 4, 5);

    assertEquals(easter, us.liturgicalDate(at("2026-04-04T21:00"), MassKind.EASTER_VIGIL));
    assertEquals(easter, us.liturgicalDate(at("2026-04-05T04:00"), MassKind.EASTER_VIGIL));
  }

  @Test
  void an_evening_that_belongs_to_a_day_out_of_bounds_is_refused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> us.ruling(at("2300-12-31T17:00"), MassKind.ANTICIPATED, "", Leave.NONE));
  }

  private MassKind kind(String start) {
    return us.kindAt(at(start));
  }

  private static LocalDateTime at(String start) {
    return LocalDateTime.parse(start);
  }
}
