package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import vestiary.calendar.Colour;
import vestiary.calendar.Day;
import vestiary.calendar.Rank;
import vestiary.calendar.Season;

/** The seasons and their weeks in all years the calendar covers. Source: UNLY 18 to 44. */
class SeasonsTest {

  /** UNLY 43, 44: 33 or 34 weeks, the last always the 34th. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void ordinary_time_has_33_or_34_weeks_and_ends_with_the_34th(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    Set<Integer> weeks = new TreeSet<>();
    for (Day day : Churches.days(church, year)) {
      if (day.season() == Season.ORDINARY) weeks.add(day.week());
    }

    assertTrue(weeks.size() == 33 || weeks.size() == 34, weeks::toString);
    assertTrue(weeks.contains(1) && weeks.contains(34), weeks::toString);
  }

  /** UNLY 28: Lent runs from Ash Wednesday to the evening of Holy Thursday. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void lent_has_44_days_from_ash_wednesday_to_holy_thursday(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    List<Day> lent = of(Season.LENT, church, year);

    assertEquals(44, lent.size());
    assertEquals("ash-wednesday", lent.get(0).kept().id());
    assertEquals("thursday-of-holy-week", lent.get(43).kept().id());
  }

  /** UNLY 22, 40; the bounds of Easter as every computus gives them. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void easter_and_advent_begin_within_their_bounds(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    LocalDate easter = Churches.dayOf("easter-sunday", church, year).date();
    LocalDate advent = of(Season.ADVENT, church, year).get(0).date();

    assertTrue(isWithin(easter, MonthDay.of(3, 22), MonthDay.of(4, 25)), easter::toString);
    assertTrue(isWithin(advent, MonthDay.of(11, 27), MonthDay.of(12, 3)), advent::toString);
    assertEquals(MonthDay.of(12, 24), MonthDay.from(last(of(Season.ADVENT, church, year)).date()));
    assertEquals(easter.plusDays(49), last(of(Season.EASTER, church, year)).date());
  }

  /** UNLY 6: four Sundays have a celebration of their own. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void four_sundays_have_a_celebration_of_their_own(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    LocalDate pentecost = Churches.dayOf("pentecost", church, year).date();
    LocalDate advent = of(Season.ADVENT, church, year).get(0).date();
    LocalDate family = Churches.dayOf("holy-family", church, year).date();

    assertEquals(pentecost.plusWeeks(1), Churches.dayOf("trinity-sunday", church, year).date());
    assertEquals(advent.minusWeeks(1), Churches.dayOf("christ-the-king", church, year).date());
    assertTrue(isWithin(family, MonthDay.of(12, 26), MonthDay.of(12, 31)), family::toString);
    assertTrue(
        family.getDayOfWeek() == DayOfWeek.SUNDAY || family.getDayOfMonth() == 30,
        family::toString);
    assertEquals(
        last(january(church, year)).date(),
        Churches.dayOf("baptism-of-the-lord", church, year).date());
  }

  /** UNLY 7 a, 37; in England and Wales the Sunday beside it, if 6 January is next to one. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void the_epiphany_is_on_6_january_or_on_a_sunday_from_the_2nd_to_the_8th(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    LocalDate epiphany =
        january(church, year).stream()
            .filter(day -> day.kept().id().startsWith("epiphany"))
            .findFirst()
            .orElseThrow()
            .date();

    assertTrue(isWithin(epiphany, MonthDay.of(1, 2), MonthDay.of(1, 8)), epiphany::toString);
    assertTrue(
        epiphany.getDayOfWeek() == DayOfWeek.SUNDAY || epiphany.getDayOfMonth() == 6,
        epiphany::toString);
  }

  /** GIRM 346; Roman Missal, Holy Week. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void the_triduum_is_white_red_and_white_and_holy_saturday_violet(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    List<Day> days = Churches.days(church, year);
    int easter = days.stream().map(d -> d.kept().id()).toList().indexOf("easter-sunday");

    assertEquals(List.of(Colour.WHITE), days.get(easter - 3).celebrations().get(2).colours());
    assertEquals(List.of(Colour.RED), days.get(easter - 2).kept().colours());
    assertEquals(List.of(Colour.VIOLET), days.get(easter - 1).kept().colours());
    assertEquals(List.of(Colour.WHITE), days.get(easter).kept().colours());
  }

  /** Parish page 'The Skips in the Lectionary Cycles of Ordinary Time'. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void with_corpus_christi_on_sunday_three_green_sundays_or_more_are_not_kept(
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    long green =
        of(Season.ORDINARY, Churches.of("us"), year).stream()
            .filter(day -> day.kept().rank() == Rank.SUNDAY)
            .count();

    // The thirty-fourth is Christ the King, and there is no first.
    assertTrue(green <= 32 - 3, () -> year + " keeps " + green);
  }

  /**
   * Ash Wednesday is 46 days before Easter and Pentecost 49 after it, so these are 14 weeks apart
   * (the page above says 13; the reckoning decides).
   */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void ordinary_time_stands_still_for_14_weeks(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    LocalDate beforeLent = of(Season.LENT, church, year).get(0).date().minusDays(1);
    LocalDate afterPentecost = last(of(Season.EASTER, church, year)).date().plusDays(2);

    assertEquals(beforeLent.plusDays(98), afterPentecost);
    assertEquals(DayOfWeek.TUESDAY, afterPentecost.getDayOfWeek());
  }

  private static List<Day> of(Season season, ChurchOfFact church, int year) {
    return Churches.days(church, year).stream().filter(day -> day.season() == season).toList();
  }

  private static List<Day> january(ChurchOfFact church, int year) {
    return of(Season.CHRISTMAS, church, year).stream()
        .filter(day -> day.date().getMonthValue() == 1)
        .toList();
  }

  private static Day last(List<Day> days) {
    return days.get(days.size() - 1);
  }

  private static boolean isWithin(LocalDate date, MonthDay first, MonthDay last) {
    MonthDay day = MonthDay.from(date);
    return !day.isBefore(first) && !day.isAfter(last);
  }
}
