package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.calendar.Colour;

/**
 * The fortnight from Monday 30 November 2026 in the United States. Source of the colours: General
 * Roman Calendar (Saint Francis Xavier 3 December, Saint Ambrose 7 December, Immaculate Conception
 * 8 December), GIRM 346 (violet in Advent, rose on its third Sunday); Our Lady of Guadalupe a feast
 * in the United States, from memory.
 */
class FortnightWordsTest {

  private static final LocalDate MONDAY = LocalDate.of(2026, 11, 30);

  /** The seventh is left out: its evening belongs to the Immaculate Conception. */
  private static final Map<LocalDate, List<Colour>> ADVENT =
      Map.of(
          december(1), List.of(Colour.VIOLET),
          december(2), List.of(Colour.VIOLET),
          december(3), List.of(Colour.WHITE),
          december(4), List.of(Colour.VIOLET, Colour.WHITE),
          december(6), List.of(Colour.VIOLET),
          december(8), List.of(Colour.WHITE),
          december(13), List.of(Colour.VIOLET, Colour.ROSE));

  private final DateWords words =
      new FortnightWords(MONDAY, (day, church) -> ADVENT.getOrDefault(day, List.of()));

  @ParameterizedTest
  @CsvSource({
    "day+0, 2026-11-30",
    "day, 2026-11-30",
    "day+8, 2026-12-08",
    "day-3, 2026-11-27",
    "day+18, 2026-12-18",
    "white, 2026-12-03",
    "white+5, 2026-12-08",
    "violet, 2026-12-01",
    "red|white|violet, 2026-12-03",
    "rose, 2026-12-13",
    "rose-1, 2026-12-12",
    "2026-12-08, 2026-12-08"
  })
  void a_word_names_a_day(String cell, LocalDate day) {
    assertEquals(Optional.of(day), words.resolve(cell, "sa"));
  }

  @Test
  void a_colour_that_is_not_kept_names_no_day() {
    assertEquals(Optional.empty(), words.resolve("red", "sa"));
    assertEquals(Optional.empty(), words.resolve("green|black", "sa"));
  }

  @Test
  void rose_names_no_day_in_a_fortnight_without_a_rose_sunday() {
    DateWords green = new FortnightWords(MONDAY, (day, church) -> List.of(Colour.GREEN));

    assertEquals(Optional.empty(), green.resolve("rose-1", "ht"));
    assertEquals(Optional.of(december(1)), green.resolve("white|red|violet|green", "sa"));
  }

  @Test
  void the_monday_itself_and_weekends_are_passed_over() {
    DateWords white =
        new FortnightWords(
            MONDAY,
            (day, church) ->
                day.equals(MONDAY) || day.getDayOfWeek().getValue() > 5 || day.equals(december(9))
                    ? List.of(Colour.WHITE)
                    : List.of(Colour.VIOLET));

    assertEquals(Optional.of(december(9)), white.resolve("white", "sa"));
  }

  @Test
  void the_second_sunday_is_the_last_day_looked_at() {
    DateWords late =
        new FortnightWords(
            MONDAY, (day, church) -> day.isAfter(december(13)) ? List.of(Colour.ROSE) : List.of());

    assertEquals(Optional.empty(), late.resolve("rose", "ht"));
  }

  @Test
  void each_church_has_its_own_white_day() {
    DateWords titles =
        new FortnightWords(
            MONDAY,
            (day, church) ->
                day.equals(december(church.equals("sa") ? 2 : 4))
                    ? List.of(Colour.WHITE)
                    : List.of());

    assertEquals(Optional.of(december(2)), titles.resolve("white", "sa"));
    assertEquals(Optional.of(december(4)), titles.resolve("white", "ht"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"blue", "white|blue", "tomorrow", "day+", "day+1000", "white|", "8 Dec"})
  void other_words_are_not_understood(String cell) {
    DateTimeException refused =
        assertThrows(DateTimeException.class, () -> words.resolve(cell, "sa"));

    assertTrue(refused.getMessage().startsWith("Write year-month-day"), refused.getMessage());
  }

  @Test
  void a_fortnight_begins_on_a_monday() {
    LocalDate tuesday = MONDAY.plusDays(1);

    assertThrows(
        IllegalArgumentException.class,
        () -> new FortnightWords(tuesday, (day, church) -> List.of()));
  }

  private static LocalDate december(int day) {
    return LocalDate.of(2026, 12, day);
  }
}
