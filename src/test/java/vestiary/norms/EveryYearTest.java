package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
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

/** What the norms say of every year, checked in all years the calendar covers. Source: UNLY. */
class EveryYearTest {

  @Property(generation = GenerationMode.EXHAUSTIVE)
  void every_date_has_one_day_with_a_celebration_and_a_colour_of_its_own(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    List<Day> days = Churches.days(church, year);

    assertEquals(LocalDate.of(year, 1, 1).lengthOfYear(), days.size());
    for (int i = 0; i < days.size(); i++) {
      assertEquals(LocalDate.ofYearDay(year, i + 1), days.get(i).date());
      days.get(i).celebrations().forEach(c -> assertTrue(isOfTheBooks(c.colours())));
      assertEquals(ids(days.get(i)).size(), days.get(i).celebrations().size(), "no id twice");
    }
  }

  /** UNLY 5: the Sundays of Advent, Lent and Easter yield to nothing. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void the_sundays_of_the_great_seasons_are_always_kept(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    for (Day day : Churches.days(church, year)) {
      boolean great = EnumSet.of(Season.ADVENT, Season.LENT, Season.EASTER).contains(day.season());
      if (!great || !isSunday(day)) continue;
      assertTrue(day.kept().precedence().number() <= 2, day::toString);
    }
  }

  /** UNLY 5: the other Sundays yield to solemnities and to feasts of the Lord alone. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void the_other_sundays_yield_only_to_solemnities_and_feasts_of_the_lord(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    Set<Rank> ranks = EnumSet.of(Rank.SOLEMNITY, Rank.FEAST_OF_THE_LORD, Rank.SUNDAY);
    for (Day day : Churches.days(church, year)) {
      boolean passion = day.season() == Season.TRIDUUM;
      if (isSunday(day) && !passion) assertTrue(ranks.contains(day.kept().rank()), day::toString);
    }
  }

  /** Canon 1247; Notitiae 20 (1984): Saturday evening is Sunday's unless Saturday obliges. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void every_sunday_obliges_and_takes_the_evening_before_it(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    for (Day day : Churches.days(church, year)) {
      if (isSunday(day)) assertTrue(day.obligation());
      boolean plainSaturday = day.date().getDayOfWeek() == DayOfWeek.SATURDAY && !day.obligation();
      if (plainSaturday) assertTrue(day.evening().tomorrow(), day::toString);
    }
  }

  /** UNLY 59: nothing that is left out stands above what is kept. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void nothing_left_out_stands_above_what_is_kept(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    for (Day day : Churches.days(church, year)) {
      if (day.celebrations().size() < 2) continue;
      Celebration other = day.celebrations().get(1);
      boolean choice = other.rank() == Rank.OPTIONAL_MEMORIAL || other.rank() == Rank.COMMEMORATION;
      assertTrue(choice || day.kept().id().equals("thursday-of-holy-week"), day::toString);
    }
  }

  private static boolean isSunday(Day day) {
    return day.date().getDayOfWeek() == DayOfWeek.SUNDAY;
  }

  private static boolean isOfTheBooks(List<Colour> colours) {
    return !colours.isEmpty() && colours.stream().allMatch(c -> c.compareTo(Colour.GOLD) < 0);
  }

  private static Set<String> ids(Day day) {
    return day.celebrations().stream().map(Celebration::id).collect(Collectors.toSet());
  }
}
