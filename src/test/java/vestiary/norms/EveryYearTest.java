package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import vestiary.calendar.Celebration;
import vestiary.calendar.Colour;
import vestiary.calendar.Day;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.Omission;
import vestiary.calendar.Rank;
import vestiary.calendar.Season;

/** What the norms say of every year, checked in all years the calendar covers. Source: UNLY. */
class EveryYearTest {

  private static final List<String> SOLEMNITIES =
      List.of(
          "mary-mother-of-god",
          "joseph-spouse-of-mary",
          "annunciation",
          "easter-sunday",
          "pentecost",
          "trinity-sunday",
          "sacred-heart",
          "nativity-of-john-the-baptist",
          "peter-and-paul",
          "assumption",
          "all-saints",
          "all-souls",
          "christ-the-king",
          "immaculate-conception",
          "nativity-of-the-lord");

  @Provide
  Arbitrary<ChurchOfFact> churches() {
    return Arbitraries.of("general", "us", "england", "wales", "ireland", "canada")
        .map(calendar -> new ChurchOfFact(calendar, ""));
  }

  @Property(generation = GenerationMode.EXHAUSTIVE)
  void every_date_has_one_day_with_a_celebration_and_a_colour_of_its_own(
      @ForAll("churches") ChurchOfFact church, @ForAll @IntRange(min = 1970, max = 2300) int year) {
    List<Day> days = days(church, year);

    assertEquals(LocalDate.of(year, 1, 1).lengthOfYear(), days.size());
    for (int i = 0; i < days.size(); i++) {
      assertEquals(LocalDate.ofYearDay(year, i + 1), days.get(i).date());
      days.get(i).celebrations().forEach(c -> assertTrue(isOfTheBooks(c.colours())));
      assertEquals(ids(days.get(i)).size(), days.get(i).celebrations().size(), "no id twice");
    }
  }

  /** UNLY 60: a solemnity that is impeded is transferred, never lost. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void every_solemnity_is_kept_once_a_year(
      @ForAll("churches") ChurchOfFact church, @ForAll @IntRange(min = 1970, max = 2300) int year) {
    List<String> kept = days(church, year).stream().map(day -> day.kept().id()).toList();

    SOLEMNITIES.forEach(id -> assertEquals(1, count(kept, id), id));
    assertEquals(1, count(kept, "epiphany") + count(kept, "epiphany-sunday"));
    assertEquals(1, count(kept, "ascension-thursday") + count(kept, "ascension-sunday"));
    assertEquals(1, count(kept, "corpus-christi-thursday") + count(kept, "corpus-christi-sunday"));
    assertEquals(church.calendar().equals("england") ? 1 : 0, patronKept(church, "george", year));
    assertEquals(church.calendar().equals("wales") ? 1 : 0, patronKept(church, "david", year));
    assertEquals(church.calendar().equals("ireland") ? 1 : 0, patronKept(church, "patrick", year));
  }

  /** UNLY 60: the nearest day free of all that stands in the first eight entries of the table. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void a_transferred_solemnity_displaces_neither_sunday_nor_feast(
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    for (String calendar : List.of("general", "us", "ireland", "canada")) {
      LiturgicalCalendar church = new ChurchOfFact(calendar, "").liturgicalCalendar();
      for (Day day : days(new ChurchOfFact(calendar, ""), year)) {
        if (day.transfers().isEmpty()) continue;
        assertTrue(day.date().getDayOfWeek() != DayOfWeek.SUNDAY, day::toString);
        assertTrue(day.omitted().stream().noneMatch(o -> isFeast(church, o)), day::toString);
      }
    }
  }

  /** UNLY 43, 44: 33 or 34 weeks, the last always the 34th. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void ordinary_time_has_33_or_34_weeks_and_ends_with_the_34th(
      @ForAll("churches") ChurchOfFact church, @ForAll @IntRange(min = 1970, max = 2300) int year) {
    Set<Integer> weeks = new TreeSet<>();
    for (Day day : days(church, year)) {
      if (day.season() == Season.ORDINARY) weeks.add(day.week());
    }

    assertTrue(weeks.size() == 33 || weeks.size() == 34, weeks::toString);
    assertTrue(weeks.contains(1) && weeks.contains(34), weeks::toString);
  }

  /** UNLY 5: the Sundays of Advent, Lent and Easter yield to nothing. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void the_sundays_of_the_great_seasons_are_always_kept(
      @ForAll("churches") ChurchOfFact church, @ForAll @IntRange(min = 1970, max = 2300) int year) {
    for (Day day : days(church, year)) {
      boolean great = EnumSet.of(Season.ADVENT, Season.LENT, Season.EASTER).contains(day.season());
      if (!great || day.date().getDayOfWeek() != DayOfWeek.SUNDAY) continue;
      assertTrue(day.kept().precedence().number() <= 2, day::toString);
    }
  }

  /** GIRM 346; Roman Missal, Holy Week. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void the_triduum_is_white_red_and_white_and_holy_saturday_violet(
      @ForAll("churches") ChurchOfFact church, @ForAll @IntRange(min = 1970, max = 2300) int year) {
    List<Day> days = days(church, year);
    int easter = days.stream().map(d -> d.kept().id()).toList().indexOf("easter-sunday");

    assertEquals(List.of(Colour.WHITE), days.get(easter - 3).celebrations().get(2).colours());
    assertEquals(List.of(Colour.RED), days.get(easter - 2).kept().colours());
    assertEquals(List.of(Colour.VIOLET), days.get(easter - 1).kept().colours());
    assertEquals(List.of(Colour.WHITE), days.get(easter).kept().colours());
  }

  /** Canon 1247; Notitiae 20 (1984): Saturday evening is Sunday's unless Saturday obliges. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void every_sunday_obliges_and_takes_the_evening_before_it(
      @ForAll("churches") ChurchOfFact church, @ForAll @IntRange(min = 1970, max = 2300) int year) {
    for (Day day : days(church, year)) {
      if (day.date().getDayOfWeek() == DayOfWeek.SUNDAY) assertTrue(day.obligation());
      boolean plainSaturday = day.date().getDayOfWeek() == DayOfWeek.SATURDAY && !day.obligation();
      if (plainSaturday) assertTrue(day.evening().tomorrow(), day::toString);
    }
  }

  /** UNLY 59: nothing that is left out stands above what is kept. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void nothing_left_out_stands_above_what_is_kept(
      @ForAll("churches") ChurchOfFact church, @ForAll @IntRange(min = 1970, max = 2300) int year) {
    for (Day day : days(church, year)) {
      if (day.celebrations().size() < 2) continue;
      Celebration other = day.celebrations().get(1);
      boolean choice = other.rank() == Rank.OPTIONAL_MEMORIAL || other.rank() == Rank.COMMEMORATION;
      assertTrue(choice || day.kept().id().equals("thursday-of-holy-week"), day::toString);
    }
  }

  private static long patronKept(ChurchOfFact church, String id, int year) {
    return days(church, year).stream()
        .filter(day -> day.kept().id().equals(id) && day.kept().rank() == Rank.SOLEMNITY)
        .count();
  }

  private static boolean isFeast(LiturgicalCalendar church, Omission omitted) {
    if (omitted.reason().startsWith("Kept on")) return false;
    return church
        .find(omitted.id())
        .map(c -> c.rank() == Rank.FEAST || c.rank() == Rank.FEAST_OF_THE_LORD)
        .orElse(true);
  }

  private static boolean isOfTheBooks(List<Colour> colours) {
    return !colours.isEmpty() && colours.stream().allMatch(c -> c.compareTo(Colour.GOLD) < 0);
  }

  private static Set<String> ids(Day day) {
    return day.celebrations().stream().map(Celebration::id).collect(Collectors.toSet());
  }

  private static long count(List<String> ids, String id) {
    return ids.stream().filter(id::equals).count();
  }

  private static List<Day> days(ChurchOfFact church, int year) {
    return church.liturgicalCalendar().days(LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31));
  }
}
