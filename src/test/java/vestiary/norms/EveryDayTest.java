package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import vestiary.calendar.Celebration;
import vestiary.calendar.Day;
import vestiary.calendar.Rank;
import vestiary.calendar.Season;

/** What may be chosen on a day, in all years the calendar covers. Source: UNLY 14 to 16. */
class EveryDayTest {

  private static final Set<Rank> CHOICES = EnumSet.of(Rank.OPTIONAL_MEMORIAL, Rank.COMMEMORATION);

  /** UNLY 14: an optional memorial is kept only when it is chosen. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void an_optional_memorial_or_commemoration_never_comes_first(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    for (Day day : Churches.days(church, year)) {
      assertTrue(!CHOICES.contains(day.kept().rank()), day::toString);
    }
  }

  /** UNLY 14, 59: an obligatory memorial leaves no choice, in any season, nor does a feast. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void nothing_is_offered_beside_an_obligatory_memorial_or_what_stands_above_it(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    for (Day day : Churches.days(church, year)) {
      boolean memorial = day.kept().rank() == Rank.MEMORIAL;
      boolean above = day.kept().precedence().number() <= 8;
      if (!memorial && !above || day.kept().id().equals("thursday-of-holy-week")) continue;
      assertEquals(1, day.celebrations().size(), day::toString);
    }
  }

  /** GIRM 355 a: on the weekdays of the ninth entry the Mass is of the day, in its colour. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void a_commemoration_keeps_the_colour_of_its_day(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    for (Day day : Churches.days(church, year)) {
      boolean privileged = day.kept().precedence().number() == 9;
      for (Celebration other : others(day)) {
        if (other.rank() == Rank.COMMEMORATION) {
          assertEquals(day.kept().colours(), other.colours(), day::toString);
        }
        boolean commemorated = other.rank() == Rank.COMMEMORATION;
        assertTrue(commemorated == privileged || isOfHolyThursday(day), day::toString);
      }
    }
  }

  /** UNLY 15: on Saturdays of Ordinary Time that have no obligatory memorial, and then always. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void the_saturday_memorial_of_mary_is_offered_on_free_saturdays_of_ordinary_time_alone(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    for (Day day : Churches.days(church, year)) {
      boolean free =
          day.season() == Season.ORDINARY
              && day.date().getDayOfWeek() == DayOfWeek.SATURDAY
              && day.kept().precedence().number() == 13;
      boolean offered =
          day.celebrations().stream().anyMatch(c -> c.id().equals("saturday-memorial-of-mary"));
      assertEquals(free, offered, day::toString);
    }
  }

  /** UNLY 16 a: Ash Wednesday and the weekdays of Holy Week are kept whatever falls on them. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void ash_wednesday_and_the_weekdays_of_holy_week_are_always_kept(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    Day easter = Churches.dayOf("easter-sunday", church, year);

    assertEquals("ash-wednesday", kept(church, easter, 46));
    assertEquals("monday-of-holy-week", kept(church, easter, 6));
    assertEquals("tuesday-of-holy-week", kept(church, easter, 5));
    assertEquals("wednesday-of-holy-week", kept(church, easter, 4));
    assertEquals("thursday-of-holy-week", kept(church, easter, 3));
  }

  private static String kept(ChurchOfFact church, Day easter, int daysBefore) {
    return church.liturgicalCalendar().day(easter.date().minusDays(daysBefore)).kept().id();
  }

  private static List<Celebration> others(Day day) {
    return day.celebrations().subList(1, day.celebrations().size());
  }

  private static boolean isOfHolyThursday(Day day) {
    return day.kept().id().equals("thursday-of-holy-week");
  }
}
