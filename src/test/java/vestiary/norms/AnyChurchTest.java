package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.MonthDay;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.Colour;
import vestiary.calendar.Day;
import vestiary.calendar.Leave;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.LocalName;
import vestiary.calendar.MassKind;
import vestiary.calendar.MassRuling;
import vestiary.calendar.Proper;
import vestiary.calendar.Verdict;

/** What holds for a church whatever its title, its dedication and its Masses. */
class AnyChurchTest {

  private static final LiturgicalCalendar US =
      LiturgicalCalendar.of(CalendarSettings.defaultsOf("us"), List.of());

  @Provide
  Arbitrary<MonthDay> datesOfTheYear() {
    return Arbitraries.integers().between(1, 366).map(AnyChurchTest::dateOfALeapYear);
  }

  /** UNLY 59 I.4, 60: both are solemnities, so neither is lost. */
  @Property(tries = 300)
  void a_church_keeps_its_title_and_its_dedication_once_every_year(
      @ForAll("datesOfTheYear") MonthDay title,
      @ForAll("datesOfTheYear") MonthDay dedication,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    LocalName name = new LocalName("A Title of Our Own", "", "");
    LiturgicalCalendar church =
        LiturgicalCalendar.of(
            CalendarSettings.defaultsOf("england"),
            List.of(
                new Proper.OwnTitular(name, title, Colour.RED), new Proper.Dedication(dedication)));

    List<Day> days = church.days(LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31));

    assertEquals(1, kept(days, "titular-of-this-church"));
    assertEquals(1, kept(days, "dedication-of-this-church"));
    assertEquals(1, kept(days, "annunciation"));
    assertEquals(1, kept(days, "george"));
  }

  @Property(tries = 2000)
  void every_mass_has_an_option_with_a_colour_and_a_reason(
      @ForAll @IntRange(min = 0, max = 120_000) int days,
      @ForAll @IntRange(min = 0, max = 23) int hour,
      @ForAll MassKind kind,
      @ForAll Leave leave) {
    LocalDateTime start = LiturgicalCalendar.FIRST.plusDays(days).atTime(hour, 0);

    MassRuling ruling = US.ruling(start, kind, "", leave);

    LocalDate next = start.toLocalDate().plusDays(1);
    assertTrue(
        List.of(US.liturgicalDate(start, kind), next).contains(ruling.day().date()),
        ruling::toString);
    assertFalse(ruling.permission().sentence().isBlank());
    assertFalse(ruling.permission().source().isBlank());
    ruling.options().forEach(option -> assertFalse(option.colours().isEmpty()));
    ruling.options().forEach(option -> assertFalse(option.reason().isBlank()));
  }

  /** GIRM 372; OCM 34: where the ritual Mass is barred the day keeps its colour. */
  @Property(tries = 2000)
  void a_ritual_mass_that_is_not_permitted_takes_the_colours_of_the_day(
      @ForAll @IntRange(min = 0, max = 120_000) int days) {
    LocalDateTime noon = LiturgicalCalendar.FIRST.plusDays(days).atTime(12, 0);

    MassRuling wedding = US.ruling(noon, MassKind.WEDDING, "", Leave.NONE);

    boolean refused = wedding.permission().verdict() == Verdict.NOT_PERMITTED;
    List<Colour> expected = refused ? wedding.day().kept().colours() : List.of(Colour.WHITE);
    assertEquals(expected, wedding.options().get(0).colours());
  }

  /** GIRM 375 to 377: what may be said freely may be said with a judgement or an order too. */
  @Property(tries = 2000)
  void more_leave_never_permits_less(@ForAll @IntRange(min = 0, max = 120_000) int days) {
    LocalDateTime noon = LiturgicalCalendar.FIRST.plusDays(days).atTime(12, 0);

    assertTrue(isPermitted(noon, Leave.RECTOR) || !isPermitted(noon, Leave.NONE));
    assertTrue(isPermitted(noon, Leave.BISHOP) || !isPermitted(noon, Leave.RECTOR));
  }

  private static boolean isPermitted(LocalDateTime start, Leave leave) {
    MassRuling votive = US.ruling(start, MassKind.VOTIVE, "holy-spirit", leave);
    return votive.permission().verdict() != Verdict.NOT_PERMITTED;
  }

  private static long kept(List<Day> days, String id) {
    return days.stream().filter(day -> day.kept().id().equals(id)).count();
  }

  private static MonthDay dateOfALeapYear(int day) {
    LocalDate date = LocalDate.ofYearDay(2024, day);
    return MonthDay.of(date.getMonth(), date.getDayOfMonth());
  }
}
