package vestiary.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What a diocese, a place or an order adds, by its place in the table. Source: UNLY 59. */
class DioceseProperTest {

  private static final LocalName OUR_LADY = new LocalName("Our Lady of the Ford", "", "");

  /** UNLY 59 I.4 a and d, II.8 a to f, III.11 a and b, III.12. */
  @ParameterizedTest
  @CsvSource({
    "patron-of-the-place,         solemnity,         4",
    "founder-of-an-order,         solemnity,         4",
    "patron-of-the-diocese,       feast,             8",
    "dedication-of-the-cathedral, feast,             8",
    "patron-of-the-region,        feast,             8",
    "feast-of-an-order,           feast,             8",
    "feast-of-one-church,         feast,             8",
    "feast-of-the-diocese,        feast,             8",
    "secondary-patron,            memorial,          11",
    "memorial,                    memorial,          11",
    "optional-memorial,           optional-memorial, 12"
  })
  void each_place_has_its_rank_and_its_number_in_the_table(String place, String rank, int number) {
    ProperPlace proper = Term.find(ProperPlace.class, place).orElseThrow();

    Celebration celebration =
        church(inscribed(proper, 7, 8)).find("our-lady-of-the-ford").orElseThrow();

    assertEquals(rank, celebration.rank().id());
    assertEquals(number, celebration.precedence().number());
  }

  /** UNLY 5, 59: a feast of the diocese (8) yields to a green Sunday (6), a patron (4) does not. */
  @Test
  void a_patron_of_the_town_takes_a_green_sunday_and_a_patron_of_the_diocese_does_not() {
    LocalDate sunday = LocalDate.of(2026, 7, 12);

    Day town = church(inscribed(ProperPlace.PATRON_OF_THE_PLACE, 7, 12)).day(sunday);
    Day diocese = church(inscribed(ProperPlace.PATRON_OF_THE_DIOCESE, 7, 12)).day(sunday);

    assertEquals("our-lady-of-the-ford", town.kept().id());
    assertEquals("fifteenth-sunday-in-ordinary-time", town.omitted().get(0).id());
    assertEquals("fifteenth-sunday-in-ordinary-time", diocese.kept().id());
    assertEquals("our-lady-of-the-ford", diocese.omitted().get(0).id());
  }

  /** UNLY 59 III.10 and 11: a memorial of the general calendar stands above a proper one. */
  @Test
  void a_memorial_of_the_diocese_yields_to_one_of_the_general_calendar() {
    Day day = church(inscribed(ProperPlace.MEMORIAL, 6, 5)).day(LocalDate.of(2026, 6, 5));

    assertEquals("boniface", day.kept().id());
    assertEquals("our-lady-of-the-ford", day.omitted().get(0).id());
  }

  /** UNLY 59 I.4 b, II.8 b. */
  @Test
  void the_cathedral_keeps_as_its_own_solemnity_what_the_diocese_keeps_as_a_feast() {
    Proper feast = inscribed(ProperPlace.DEDICATION_OF_THE_CATHEDRAL, 10, 14);
    LocalDate date = LocalDate.of(2026, 10, 14);

    Day cathedral = church(feast, new Proper.Dedication(MonthDay.of(10, 14))).day(date);
    Day parish = church(feast).day(date);

    assertEquals("dedication-of-this-church", cathedral.kept().id());
    assertEquals(Rank.SOLEMNITY, cathedral.kept().rank());
    assertTrue(cathedral.omitted().stream().noneMatch(o -> o.id().equals("our-lady-of-the-ford")));
    assertEquals(Rank.FEAST, parish.kept().rank());
  }

  @Test
  void a_patron_of_the_diocese_is_a_solemnity_in_the_church_of_that_title() {
    Proper patron = new Proper.Placed("martin-of-tours", ProperPlace.PATRON_OF_THE_DIOCESE);
    LocalDate date = LocalDate.of(2026, 11, 11);

    assertEquals(Rank.FEAST, church(patron).day(date).kept().rank());
    assertEquals(
        Precedence.OWN_TITULAR,
        church(patron, new Proper.Titular("martin-of-tours")).day(date).kept().precedence());
    assertEquals(
        Precedence.OWN_TITULAR,
        church(new Proper.Titular("martin-of-tours"), patron).day(date).kept().precedence());
  }

  @Test
  void a_church_may_bear_the_title_of_a_celebration_of_its_diocese() {
    Day day =
        church(
                new Proper.Titular("our-lady-of-the-ford"),
                inscribed(ProperPlace.OPTIONAL_MEMORIAL, 7, 8))
            .day(LocalDate.of(2026, 7, 8));

    assertEquals(Rank.SOLEMNITY, day.kept().rank());
    assertTrue(
        church(inscribed(ProperPlace.MEMORIAL, 7, 8)).titles().stream()
            .anyMatch(c -> c.id().equals("our-lady-of-the-ford")));
  }

  /** UNLY 56: a celebration that is always impeded in a place gets another day there. */
  @Test
  void a_celebration_that_is_moved_leaves_the_day_of_the_general_calendar() {
    Proper moved = new Proper.Moved("boniface", ProperPlace.MEMORIAL, MonthDay.of(6, 8));

    assertEquals(Rank.FERIA, church(moved).day(LocalDate.of(2026, 6, 5)).kept().rank());
    assertEquals("boniface", church(moved).day(LocalDate.of(2026, 6, 8)).kept().id());
  }

  @Test
  void what_stands_higher_in_the_general_calendar_stays_there() {
    Proper patron =
        new Proper.Placed("nativity-of-john-the-baptist", ProperPlace.PATRON_OF_THE_PLACE);

    Day day = church(patron).day(LocalDate.of(2026, 6, 24));

    assertEquals(Precedence.SOLEMNITY_OF_A_SAINT, day.kept().precedence());
  }

  /** Congregation for Divine Worship, note of 11 May 2020 (the clause on patrons from memory). */
  @Test
  void where_the_baptist_is_patron_the_sacred_heart_gives_way_in_2022() {
    Proper patron =
        new Proper.Placed("nativity-of-john-the-baptist", ProperPlace.PATRON_OF_THE_DIOCESE);

    assertEquals("sacred-heart", church(patron).day(LocalDate.of(2022, 6, 23)).kept().id());
    assertEquals(
        "nativity-of-john-the-baptist", church(patron).day(LocalDate.of(2022, 6, 24)).kept().id());
    assertEquals("sacred-heart", church().day(LocalDate.of(2022, 6, 24)).kept().id());
  }

  /** For 2033 no note is known: a bishop may set the Baptist elsewhere than on 23 June. */
  @Test
  void a_decision_for_one_year_goes_before_the_rule() {
    Proper decision = new Proper.KeptOn("nativity-of-john-the-baptist", LocalDate.of(2033, 6, 25));

    Day day = church(decision).day(LocalDate.of(2033, 6, 25));

    assertEquals("nativity-of-john-the-baptist", day.kept().id());
    assertEquals(LocalDate.of(2033, 6, 24), day.transfers().get(0).from());
    assertEquals("sacred-heart", church(decision).day(LocalDate.of(2033, 6, 24)).kept().id());
    assertEquals(
        "nativity-of-john-the-baptist",
        church(decision).day(LocalDate.of(2044, 6, 23)).kept().id());
  }

  @Test
  void a_celebration_nobody_knows_is_refused_by_name() {
    Proper unknown = new Proper.Placed("nobody", ProperPlace.MEMORIAL);

    String why = assertThrows(IllegalArgumentException.class, () -> church(unknown)).getMessage();

    assertEquals(
        "No celebration \"nobody\" of the calendar \"general\" can be kept as a proper.", why);
  }

  @ParameterizedTest
  @EnumSource(
      value = Colour.class,
      names = {"GOLD", "SILVER"})
  void a_proper_is_never_gold_or_silver(Colour metal) {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new Proper.Inscribed("ours", OUR_LADY, MonthDay.of(7, 8), metal, ProperPlace.MEMORIAL));
  }

  private static Proper inscribed(ProperPlace place, int month, int day) {
    return new Proper.Inscribed(
        "our-lady-of-the-ford", OUR_LADY, MonthDay.of(month, day), Colour.WHITE, place);
  }

  private static LiturgicalCalendar church(Proper... propers) {
    return LiturgicalCalendar.of(CalendarSettings.defaultsOf("general"), List.of(propers));
  }
}
