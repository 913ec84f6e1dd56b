package vestiary.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Test;

/** UNLY 52 c, 59 I.4: what one church keeps and its neighbour does not. */
class ChurchProperTest {

  private static final LocalName OUR_TITLE = new LocalName("Saint Nobody", "", "");

  @Test
  void a_title_that_is_a_memorial_elsewhere_is_a_solemnity_here() {
    Day day = day(new Proper.Titular("agnes"), LocalDate.of(2026, 1, 21));

    assertEquals(Rank.SOLEMNITY, day.kept().rank());
    assertEquals(Precedence.OWN_TITULAR, day.kept().precedence());
    assertEquals(List.of(Colour.RED), day.kept().colours());
  }

  @Test
  void a_title_that_is_a_solemnity_already_keeps_its_place() {
    Day day = day(new Proper.Titular("assumption"), LocalDate.of(2026, 8, 15));

    assertEquals(Precedence.SOLEMNITY_OF_MARY, day.kept().precedence());
  }

  @Test
  void a_title_the_calendar_does_not_have_brings_its_own_day_and_colour() {
    Proper title = new Proper.OwnTitular(OUR_TITLE, MonthDay.of(7, 7), Colour.RED);

    Day day = day(title, LocalDate.of(2026, 7, 7));

    assertEquals("titular-of-this-church", day.kept().id());
    assertEquals(
        "Red, as this church keeps its title (GIRM 346).", day.kept().colourReason().cited());
    assertEquals(false, day.obligation());
  }

  @Test
  void a_title_is_never_gold_or_silver() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new Proper.OwnTitular(OUR_TITLE, MonthDay.of(7, 7), Colour.GOLD));
  }

  @Test
  void a_dedication_in_lent_goes_from_its_sunday_to_monday() {
    Proper dedication = new Proper.Dedication(MonthDay.of(3, 8));

    Day sunday = day(dedication, LocalDate.of(2026, 3, 8));
    Day monday = day(dedication, LocalDate.of(2026, 3, 9));

    assertEquals("dedication-of-this-church", sunday.omitted().get(0).id());
    assertEquals("dedication-of-this-church", monday.kept().id());
    assertEquals(List.of(Colour.WHITE), monday.kept().colours());
  }

  /** UNLY 60: the nearest free day lies before, when the year has none left after. */
  @Test
  void a_solemnity_without_a_free_day_left_in_the_year_goes_back_to_the_nearest() {
    List<Proper> propers =
        List.of(
            new Proper.OwnTitular(OUR_TITLE, MonthDay.of(12, 31), Colour.RED),
            new Proper.Dedication(MonthDay.of(12, 31)));
    LiturgicalCalendar church =
        LiturgicalCalendar.of(CalendarSettings.defaultsOf("general"), propers);

    Day last = church.day(LocalDate.of(2026, 12, 31));
    Day nearest = church.day(LocalDate.of(2026, 12, 30));

    assertEquals("dedication-of-this-church", last.kept().id());
    assertEquals("titular-of-this-church", nearest.kept().id());
  }

  private static Day day(Proper proper, LocalDate date) {
    return LiturgicalCalendar.of(CalendarSettings.defaultsOf("general"), List.of(proper)).day(date);
  }
}
