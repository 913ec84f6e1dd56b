package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import vestiary.calendar.Day;
import vestiary.calendar.Season;

/**
 * In which years great days meet: these and no other from 1970 to 2300, and what comes of it.
 * Source: reckoned from UNLY 59 and 60 and the notices named.
 */
class CollisionYearsTest {

  private static final ChurchOfFact GENERAL = Churches.of("general");
  private static final ChurchOfFact US = Churches.of("us");

  /** Congregation for Divine Worship, note of 11 May 2020 (for 2022; later years by likeness). */
  @Test
  void the_sacred_heart_on_24_june_sends_the_baptist_to_the_23rd() {
    List<Integer> years = List.of(2022, 2033, 2044, 2101, 2112, 2174, 2185, 2196, 2242, 2253, 2264);

    assertEquals(years, years(year -> isKept(GENERAL, "sacred-heart", year, 6, 24)));
    assertEquals(
        years, years(year -> isKept(GENERAL, "nativity-of-john-the-baptist", year, 6, 23)));
  }

  @Test
  void the_sacred_heart_on_29_june_sends_peter_and_paul_to_the_30th() {
    List<Integer> years = List.of(1973, 1984, 2057, 2068, 2114, 2125, 2136, 2204, 2277, 2288);

    assertEquals(years, years(year -> isKept(GENERAL, "sacred-heart", year, 6, 29)));
    assertEquals(years, years(year -> isKept(GENERAL, "peter-and-paul", year, 6, 30)));
    assertEquals(years, years(year -> isKept(US, "corpus-christi-sunday", year, 6, 24)));
  }

  @Test
  void corpus_christi_on_24_june_sends_the_baptist_to_the_25th() {
    List<Integer> onThursday = List.of(2038, 2190, 2258);
    List<Integer> onSunday = List.of(1973, 1984, 2057, 2068, 2114, 2125, 2136, 2204, 2277, 2288);

    assertEquals(
        onThursday, years(year -> isKept(GENERAL, "corpus-christi-thursday", year, 6, 24)));
    assertEquals(
        onThursday, years(year -> isKept(GENERAL, "nativity-of-john-the-baptist", year, 6, 25)));
    assertEquals(onSunday, years(year -> isKept(US, "nativity-of-john-the-baptist", year, 6, 25)));
  }

  /** Notitiae 42 (2006) 96; for years before it the calendar gives the present norm. */
  @Test
  void joseph_on_palm_sunday_goes_to_the_day_before() {
    List<Integer> years = List.of(1978, 1989, 2062, 2073, 2084, 2119, 2130, 2141, 2209, 2282, 2293);

    assertEquals(years, years(year -> isKept(GENERAL, "palm-sunday", year, 3, 19)));
    assertEquals(years, years(year -> isKept(GENERAL, "joseph-spouse-of-mary", year, 3, 18)));
  }

  /** Notitiae 42 (2006) 96. */
  @Test
  void joseph_on_a_weekday_of_holy_week_goes_to_the_saturday_before_it() {
    List<Integer> years = List.of(2008, 2035, 2046, 2103, 2160, 2187, 2198, 2228, 2255, 2266, 2285);

    assertEquals(years, years(year -> isInHolyWeek(LocalDate.of(year, 3, 19))));
    for (int year : years) {
      LocalDate easter = Churches.dayOf("easter-sunday", GENERAL, year).date();
      assertEquals(easter.minusDays(8), dateOfJoseph(year));
    }
  }

  @Test
  void easter_on_25_march_sends_the_annunciation_to_2_april() {
    List<Integer> years = List.of(2035, 2046, 2103, 2187, 2198, 2255, 2266);

    assertEquals(years, years(year -> isKept(GENERAL, "easter-sunday", year, 3, 25)));
    assertEquals(years, years(year -> isKept(GENERAL, "annunciation", year, 4, 2)));
  }

  /** Decree of 11 February 2018: a memorial, so a feast goes before it. */
  @Test
  void mary_mother_of_the_church_yields_to_matthias_and_to_the_visitation() {
    List<Integer> matthias = List.of(2035, 2046, 2103, 2187, 2198, 2255, 2266);
    List<Integer> visitation =
        List.of(2066, 2077, 2088, 2123, 2134, 2145, 2156, 2202, 2213, 2224, 2286, 2297);

    assertEquals(matthias, years(year -> isMotherOfTheChurchOmitted(year, 5, 14)));
    assertEquals(visitation, years(year -> isMotherOfTheChurchOmitted(year, 5, 31)));
    assertEquals(
        matthias.size() + visitation.size(), years(this::isMotherOfTheChurchOmitted).size());
  }

  /** UNLY 43, 44; with the Epiphany on Sunday. */
  @Test
  void seven_years_from_2020_to_2040_have_34_weeks() {
    List<Integer> years =
        IntStream.rangeClosed(2020, 2040).filter(year -> weeks(year) == 34).boxed().toList();

    assertEquals(List.of(2023, 2024, 2028, 2029, 2034, 2035, 2040), years);
  }

  private static List<Integer> years(IntPredicate meets) {
    return IntStream.rangeClosed(1970, 2300).filter(meets).boxed().toList();
  }

  private static boolean isKept(
      ChurchOfFact church, String celebration, int year, int month, int day) {
    return day(church, LocalDate.of(year, month, day)).kept().id().equals(celebration);
  }

  private static boolean isInHolyWeek(LocalDate date) {
    Day day = day(GENERAL, date);
    return day.kept().id().endsWith("-of-holy-week") || day.season() == Season.TRIDUUM;
  }

  private static LocalDate dateOfJoseph(int year) {
    return Churches.dayOf("joseph-spouse-of-mary", GENERAL, year).date();
  }

  private static boolean isMotherOfTheChurchOmitted(int year, int month, int day) {
    return isMotherOfTheChurchOmitted(day(GENERAL, LocalDate.of(year, month, day)));
  }

  private boolean isMotherOfTheChurchOmitted(int year) {
    return Churches.days(GENERAL, year).stream()
        .anyMatch(CollisionYearsTest::isMotherOfTheChurchOmitted);
  }

  private static boolean isMotherOfTheChurchOmitted(Day day) {
    return day.omitted().stream().anyMatch(o -> o.id().equals("mary-mother-of-the-church"));
  }

  private static long weeks(int year) {
    return Churches.days(US, year).stream()
        .filter(day -> day.season() == Season.ORDINARY)
        .mapToInt(Day::week)
        .distinct()
        .count();
  }

  private static Day day(ChurchOfFact church, LocalDate date) {
    return church.liturgicalCalendar().day(date);
  }
}
