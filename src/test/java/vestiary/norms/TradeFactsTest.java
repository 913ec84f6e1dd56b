package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import vestiary.calendar.Celebration;
import vestiary.calendar.Colour;
import vestiary.calendar.Day;
import vestiary.calendar.Rank;
import vestiary.calendar.Season;

/**
 * What every sacristan says of the year, in all years the calendar covers. Source: common practice,
 * no source.
 */
class TradeFactsTest {

  @Property(generation = GenerationMode.EXHAUSTIVE)
  void ordinary_time_ends_with_week_34(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    List<Day> ordinary = of(Season.ORDINARY, church, year);
    Day last = ordinary.get(ordinary.size() - 1);

    assertEquals(34, last.week());
    assertEquals(DayOfWeek.SATURDAY, last.date().getDayOfWeek());
  }

  @Property(generation = GenerationMode.EXHAUSTIVE)
  void advent_has_four_sundays_and_lent_six_with_palm_sunday(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    List<Day> advent = sundays(of(Season.ADVENT, church, year));
    List<Day> lent = sundays(of(Season.LENT, church, year));

    assertEquals(4, advent.size());
    assertEquals(6, lent.size());
    assertEquals("palm-sunday", lent.get(5).kept().id());
  }

  @Property(generation = GenerationMode.EXHAUSTIVE)
  void the_easter_octave_is_white_for_eight_days(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    LocalDate easter = Churches.dayOf("easter-sunday", church, year).date();

    List<Day> octave = Churches.days(church, easter, easter.plusDays(7));

    octave.forEach(day -> assertEquals(List.of(Colour.WHITE), day.kept().colours(), day::toString));
  }

  /** Where a Sunday takes Stephen or the Holy Innocents, it is white. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void the_christmas_octave_is_white_but_red_on_26_and_28_december(
      @ForAll @IntRange(min = 1970, max = 2299) int year) {
    LocalDate christmas = LocalDate.of(year, 12, 25);
    for (Day day : Churches.days(Churches.of("general"), christmas, christmas.plusDays(7))) {
      int ofMonth = day.date().getDayOfMonth();
      boolean martyrs =
          (ofMonth == 26 || ofMonth == 28) && day.date().getDayOfWeek() != DayOfWeek.SUNDAY;
      Colour expected = martyrs ? Colour.RED : Colour.WHITE;
      assertEquals(List.of(expected), day.kept().colours(), day::toString);
    }
  }

  @Property(generation = GenerationMode.EXHAUSTIVE)
  void rose_is_worn_on_two_sundays_a_year(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    List<String> rose =
        Churches.days(church, year).stream()
            .filter(day -> day.celebrations().stream().anyMatch(TradeFactsTest::isRose))
            .map(day -> day.kept().id())
            .toList();

    assertEquals(List.of("fourth-sunday-of-lent", "third-sunday-of-advent"), rose);
  }

  @Property(generation = GenerationMode.EXHAUSTIVE)
  void pentecost_is_the_fiftieth_day_and_red(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    List<Day> easterTime = of(Season.EASTER, church, year);
    int easter = Churches.dayOf("easter-sunday", church, year).date().getDayOfYear();

    Day fiftieth = church.liturgicalCalendar().day(LocalDate.ofYearDay(year, easter + 49));

    assertEquals("pentecost", fiftieth.kept().id());
    assertEquals(List.of(Colour.RED), fiftieth.kept().colours());
    assertEquals(50, easterTime.size());
  }

  /** But a martyr who is only commemorated leaves the day its colour. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void martyrs_are_red(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    List<Celebration> martyrs =
        Churches.days(church, year).stream()
            .flatMap(day -> day.celebrations().stream())
            .filter(c -> c.name().english().contains("Martyr") && c.rank() != Rank.COMMEMORATION)
            .toList();

    assertTrue(martyrs.size() > 10, martyrs::toString);
    martyrs.forEach(c -> assertEquals(List.of(Colour.RED), c.colours(), c::id));
  }

  @Property(generation = GenerationMode.EXHAUSTIVE)
  void the_year_begins_with_advent(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    Day advent = of(Season.ADVENT, church, year).get(0);
    Day eve = church.liturgicalCalendar().day(advent.date().minusDays(1));

    assertEquals("first-sunday-of-advent", advent.kept().id());
    assertNotEquals(eve.sundayCycle(), advent.sundayCycle());
    assertNotEquals(eve.weekdayCycle(), advent.weekdayCycle());
    assertEquals(1, cyclesFrom(church, LocalDate.of(year, 1, 1), eve.date()));
    assertEquals(1, cyclesFrom(church, advent.date(), LocalDate.of(year, 12, 31)));
    assertTrue(MonthDay.from(advent.date()).isAfter(MonthDay.of(11, 26)));
  }

  private static int cyclesFrom(ChurchOfFact church, LocalDate first, LocalDate last) {
    return Churches.days(church, first, last).stream()
        .map(day -> day.sundayCycle() + " " + day.weekdayCycle())
        .collect(Collectors.toSet())
        .size();
  }

  private static boolean isRose(Celebration celebration) {
    return celebration.colours().contains(Colour.ROSE);
  }

  private static List<Day> sundays(List<Day> days) {
    return days.stream().filter(day -> day.date().getDayOfWeek() == DayOfWeek.SUNDAY).toList();
  }

  /** The days of a season in one civil year; those of Easter Time begin with Easter Sunday. */
  private static List<Day> of(Season season, ChurchOfFact church, int year) {
    return Churches.days(church, year).stream().filter(day -> day.season() == season).toList();
  }
}
