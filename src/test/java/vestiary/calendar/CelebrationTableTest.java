package vestiary.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The tables themselves: whole, without contradiction, each line with its source. */
class CelebrationTableTest {

  private static final List<String> TABLES =
      List.of("general", "movable", "us", "england", "wales", "ireland", "canada");

  @Test
  void every_line_names_its_source() {
    for (String table : TABLES) {
      for (Map<String, String> line : CsvTable.read(table + ".csv")) {
        assertFalse(line.get("source").isBlank(), () -> table + ": " + line.get("id"));
      }
    }
  }

  /** The count by rank of the calendar as decreed up to February 2026. */
  @Test
  void the_general_calendar_has_as_many_fixed_days_of_each_rank_as_decreed() {
    Map<Rank, Long> counts =
        CelebrationTable.fixed().stream()
            .filter(entry -> entry.isKeptIn(2026))
            .collect(Collectors.groupingBy(Entry::rank, Collectors.counting()));

    assertEquals(
        Map.of(
            Rank.SOLEMNITY, 11L,
            Rank.FEAST_OF_THE_LORD, 4L,
            Rank.FEAST, 20L,
            Rank.MEMORIAL, 67L,
            Rank.OPTIONAL_MEMORIAL, 120L),
        counts);
  }

  @Test
  void two_lines_of_one_celebration_never_hold_in_the_same_year() {
    assertDisjoint("general", general().toList());
    national().forEach(CelebrationTableTest::assertDisjoint);
  }

  @Test
  void every_line_holds_in_some_year_since_the_calendar_of_1970() {
    every().forEach(e -> assertTrue(e.since() <= e.until() && e.until() >= 1970, e::toString));
  }

  /** What is known of a celebration, as the title of a church, is read from its last line. */
  @Test
  void the_last_line_of_a_national_celebration_is_in_force() {
    national()
        .forEach(
            (table, entries) -> {
              Map<String, Entry> last = new LinkedHashMap<>();
              entries.forEach(entry -> last.put(entry.id(), entry));
              last.values()
                  .forEach(e -> assertEquals(Integer.MAX_VALUE, e.until(), table + ": " + e.id()));
            });
  }

  /** A church that reads Latin or Spanish must not lose a name that the general calendar has. */
  @Test
  void a_national_form_of_a_general_celebration_is_named_in_three_languages() {
    Set<String> general = general().map(Entry::id).collect(Collectors.toSet());
    national().values().stream()
        .flatMap(List::stream)
        .filter(entry -> general.contains(entry.id()))
        .map(entry -> entry.celebration().name())
        .forEach(
            name ->
                assertTrue(!name.latin().isEmpty() && !name.spanish().isEmpty(), name::english));
  }

  @Test
  void every_holy_day_is_a_solemnity_of_its_calendar() {
    for (OfferedCalendar calendar : OfferedCalendars.all()) {
      ChurchCalendar church = new ChurchCalendar(calendar.defaults(), List.of());
      CalendarNorms norms = church.norms();
      for (String id : norms.holyDays()) {
        assertEquals(Rank.SOLEMNITY, church.find(id).orElseThrow().rank(), id);
      }
      assertTrue(norms.holyDays().containsAll(norms.keptOnSundayBeside()));
      assertTrue(norms.holyDays().containsAll(norms.lapseBesideSunday()));
    }
  }

  /** GIRM 346 b, with the exceptions of 346 a. */
  @Test
  void red_is_for_the_passion_the_spirit_apostles_evangelists_and_martyrs_alone() {
    Set<Kind> reds =
        EnumSet.of(
            Kind.PASSION, Kind.HOLY_SPIRIT, Kind.APOSTLE, Kind.EVANGELIST, Kind.MARTYR, Kind.LORD);

    every()
        .filter(entry -> entry.celebration().colours().contains(Colour.RED))
        .forEach(entry -> assertTrue(entry.kinds().stream().anyMatch(reds::contains), entry::id));
    every()
        .filter(entry -> entry.kinds().contains(Kind.MARTYR))
        .forEach(entry -> assertEquals(List.of(Colour.RED), entry.celebration().colours()));
  }

  @Test
  void general_names_are_in_three_languages_and_carry_no_notes() {
    general()
        .map(entry -> entry.celebration().name())
        .forEach(
            name -> {
              assertFalse(name.latin().isEmpty(), name::english);
              assertFalse(name.spanish().isEmpty(), name::english);
              assertFalse(name.english().contains("where kept"), name::english);
            });
  }

  @Test
  void a_colour_reason_is_one_sentence_that_begins_with_the_usual_colour() {
    general()
        .map(Entry::celebration)
        .forEach(
            celebration -> {
              String usual = celebration.colours().get(0).id();
              String reason = celebration.colourReason().cited();
              assertTrue(reason.toLowerCase().startsWith(usual), reason);
              assertTrue(reason.endsWith("."), reason);
            });
  }

  private static void assertDisjoint(String table, List<Entry> entries) {
    for (Entry one : entries) {
      for (Entry other : entries) {
        if (one == other || !one.id().equals(other.id())) continue;
        boolean apart = one.until() < other.since() || other.until() < one.since();
        assertTrue(apart, () -> table + ": " + one.id());
      }
    }
  }

  private static Stream<Entry> every() {
    return Stream.concat(general(), national().values().stream().flatMap(List::stream));
  }

  /** The lines of every national table, by the id of its calendar. */
  private static Map<String, List<Entry>> national() {
    Map<String, List<Entry>> tables = new LinkedHashMap<>();
    for (OfferedCalendar calendar : OfferedCalendars.all()) {
      tables.put(calendar.id(), CelebrationTable.proper(calendar));
    }
    return tables;
  }

  private static Stream<Entry> general() {
    return Stream.concat(CelebrationTable.fixed().stream(), CelebrationTable.movable().stream());
  }
}
