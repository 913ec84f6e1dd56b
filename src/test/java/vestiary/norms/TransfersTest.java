package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import vestiary.calendar.Celebration;
import vestiary.calendar.Day;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.Omission;
import vestiary.calendar.Rank;

/** Impeded solemnities in all years the calendar covers. Source: UNLY 5, 60. */
class TransfersTest {

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

  private static final Map<String, String> PATRONS =
      Map.of("england", "george", "wales", "david", "ireland", "patrick");

  /** UNLY 60: a solemnity that is impeded is transferred, never lost. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void every_solemnity_is_kept_once_a_year(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    List<Day> days = Churches.days(church, year);

    SOLEMNITIES.forEach(id -> assertEquals(1, kept(days, id), id));
    assertEquals(1, kept(days, "epiphany") + kept(days, "epiphany-sunday"));
    assertEquals(1, kept(days, "ascension-thursday") + kept(days, "ascension-sunday"));
    assertEquals(1, kept(days, "corpus-christi-thursday") + kept(days, "corpus-christi-sunday"));
    PATRONS.forEach(
        (calendar, patron) ->
            assertEquals(
                church.calendar().equals(calendar) ? 1 : 0, keptAsSolemnity(days, patron)));
  }

  /** UNLY 60: free of all that stands in the first eight entries of the table. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void a_transferred_solemnity_lands_on_a_day_of_the_last_five_entries_of_the_table(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    LocalDate easter = Churches.dayOf("easter-sunday", church, year).date();

    forEachTransfer(
        church,
        year,
        transfer -> {
          LocalDate date = transfer.to().date();
          boolean nearEaster =
              !date.isBefore(easter.minusDays(7)) && !date.isAfter(easter.plusDays(7));
          assertTrue(date.getDayOfWeek() != DayOfWeek.SUNDAY, transfer::toString);
          assertTrue(!nearEaster && !date.equals(easter.minusDays(46)), transfer::toString);
          assertTrue(
              transfer.to().omitted().stream().noneMatch(o -> isFeast(church, o)),
              transfer::toString);
        });
  }

  /**
   * UNLY 60: the nearest such day, which is read as the next; but Joseph goes back before Holy Week
   * (Notitiae 42 (2006) 96), and the Baptist to 23 June (Congregation for Divine Worship, note of
   * 11 May 2020).
   */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void between_an_impeded_solemnity_and_its_new_day_every_day_is_taken(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    forEachTransfer(
        church,
        year,
        transfer -> {
          if (transfer.isBackwards()) {
            assertTrue(transfer.isByItsOwnNotice(), transfer::toString);
            return;
          }
          LocalDate next = transfer.from().date().plusDays(1);
          Churches.days(church, next, transfer.to().date().minusDays(1))
              .forEach(day -> assertTrue(day.kept().precedence().number() <= 8, day::toString));
        });
  }

  /** Left aside: what goes to the Sunday beside it by rule, and what was decided for one year. */
  private static void forEachTransfer(ChurchOfFact church, int year, Consumer<Transfer> check) {
    List<Day> days = Churches.days(church, year);
    for (Day day : days) {
      for (Omission omitted : day.omitted()) {
        if (!omitted.isKeptElsewhere()) continue;
        if (omitted.reason().contains("goes to the Sunday beside it")) continue;
        if (omitted.reason().contains("so it was decided")) continue;
        check.accept(new Transfer(omitted.id(), day, dayOf(omitted.id(), days)));
      }
    }
  }

  private static Day dayOf(String id, List<Day> days) {
    return days.stream().filter(day -> day.kept().id().equals(id)).findFirst().orElseThrow();
  }

  private static boolean isFeast(ChurchOfFact church, Omission omitted) {
    if (omitted.isKeptElsewhere()) return false;
    LiturgicalCalendar calendar = church.liturgicalCalendar();
    return calendar.find(omitted.id()).map(TransfersTest::isFeast).orElse(true);
  }

  private static boolean isFeast(Celebration celebration) {
    return celebration.precedence().number() <= 8 || celebration.rank() == Rank.SUNDAY;
  }

  private static long kept(List<Day> days, String id) {
    return days.stream().filter(day -> day.kept().id().equals(id)).count();
  }

  private static long keptAsSolemnity(List<Day> days, String id) {
    return days.stream()
        .filter(day -> day.kept().id().equals(id) && day.kept().rank() == Rank.SOLEMNITY)
        .count();
  }

  private record Transfer(String id, Day from, Day to) {

    boolean isBackwards() {
      return to.date().isBefore(from.date());
    }

    boolean isByItsOwnNotice() {
      return id.equals("joseph-spouse-of-mary") || id.equals("nativity-of-john-the-baptist");
    }
  }
}
