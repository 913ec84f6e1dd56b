package vestiary.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.HashSet;
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
  void no_celebration_stands_twice_in_one_calendar_in_one_year() {
    for (OfferedCalendar calendar : OfferedCalendars.all()) {
      for (int year : new int[] {1970, 1996, 2002, 2010, 2020, 2026}) {
        Set<String> seen = new HashSet<>();
        general().filter(e -> e.isKeptIn(year)).forEach(e -> assertTrue(seen.add(e.id()), e::id));
        seen.clear();
        CelebrationTable.proper(calendar).stream()
            .filter(e -> e.isKeptIn(year))
            .forEach(e -> assertTrue(seen.add(e.id()), e::id));
      }
    }
  }

  /** GIRM 346 b, with the exceptions of 346 a. */
  @Test
  void red_is_for_the_passion_the_spirit_apostles_evangelists_and_martyrs_alone() {
    Set<Kind> reds =
        EnumSet.of(
            Kind.PASSION, Kind.HOLY_SPIRIT, Kind.APOSTLE, Kind.EVANGELIST, Kind.MARTYR, Kind.LORD);

    general()
        .filter(entry -> entry.celebration().colours().contains(Colour.RED))
        .forEach(entry -> assertTrue(entry.kinds().stream().anyMatch(reds::contains), entry::id));
    general()
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
              String reason = celebration.colourReason();
              assertTrue(reason.toLowerCase().startsWith(usual), reason);
              assertTrue(reason.endsWith("."), reason);
            });
  }

  private static Stream<Entry> general() {
    return Stream.concat(CelebrationTable.fixed().stream(), CelebrationTable.movable().stream());
  }
}
