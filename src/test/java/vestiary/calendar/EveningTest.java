package vestiary.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whose an evening is, and who may choose. Source: UNLY 3, 11, 61; Notitiae 20 (1984). */
class EveningTest {

  private static final LocalDate BEFORE_JOSEPH = LocalDate.of(2026, 3, 18);

  /** In the United States neither 18 nor 19 March obliges: common practice, no source. */
  @Test
  void an_evening_that_no_law_settles_follows_the_cluster_and_leaves_the_other_mass() {
    Evening usual = us(OpenEvening.SOLEMNITY).day(BEFORE_JOSEPH).evening();
    Evening otherwise = us(OpenEvening.WEEKDAY).day(BEFORE_JOSEPH).evening();

    assertTrue(usual.tomorrow());
    assertFalse(otherwise.tomorrow());
    assertEquals(Leeway.EITHER, usual.leeway());
    assertEquals(Leeway.EITHER, otherwise.leeway());
    assertTrue(usual.reason().startsWith("No law settles this evening"));
  }

  @Test
  void both_masses_may_be_said_on_such_an_evening_whatever_the_cluster_chose() {
    for (OpenEvening open : OpenEvening.values()) {
      LiturgicalCalendar us = us(open);
      assertEquals(Verdict.PERMITTED, verdict(us, "2026-03-18T18:00", MassKind.ANTICIPATED));
      assertEquals(Verdict.PERMITTED, verdict(us, "2026-03-18T18:00", MassKind.OF_THE_DAY));
    }
    LocalDateTime six = LocalDateTime.parse("2026-03-18T18:00");
    assertEquals(MassKind.ANTICIPATED, us(OpenEvening.SOLEMNITY).kindAt(six));
    assertEquals(MassKind.OF_THE_DAY, us(OpenEvening.WEEKDAY).kindAt(six));
  }

  /** UNLY 11 and the Missal: the Birth of John the Baptist has a Vigil Mass. */
  @Test
  void a_solemnity_with_a_vigil_mass_takes_the_evening() {
    Evening evening = us(OpenEvening.WEEKDAY).day(LocalDate.of(2026, 6, 23)).evening();

    assertTrue(evening.tomorrow());
    assertEquals(Leeway.NONE, evening.leeway());
  }

  /** A US ordo allowed the Vigil Mass of 24 June on Sunday 23 June 2024 for pastoral reasons. */
  @Test
  void a_vigil_mass_on_a_sunday_evening_takes_somebodys_leave() {
    LiturgicalCalendar us = us(OpenEvening.SOLEMNITY);
    LocalDateTime six = LocalDateTime.parse("2024-06-23T18:00");

    assertEquals(
        Verdict.NOT_PERMITTED,
        us.ruling(six, MassKind.ANTICIPATED, "", Leave.NONE).permission().verdict());
    assertEquals(
        Verdict.WITH_LEAVE,
        us.ruling(six, MassKind.ANTICIPATED, "", Leave.RECTOR).permission().verdict());
    assertEquals(MassKind.OF_THE_DAY, us.kindAt(six));
  }

  /** Archdiocese of Los Angeles, 'Liturgical Year and Calendar' (2025): no vigil of 8 December. */
  @Test
  void a_sunday_of_advent_keeps_its_evening_even_by_leave() {
    LocalDateTime six = LocalDateTime.parse("2025-12-07T18:00");

    MassRuling vigil =
        us(OpenEvening.SOLEMNITY).ruling(six, MassKind.ANTICIPATED, "", Leave.BISHOP);

    assertEquals(Verdict.NOT_PERMITTED, vigil.permission().verdict());
  }

  /** A diocesan guide on the Order of Celebrating Matrimony 32, 34 for Saturday evenings. */
  @Test
  void a_wedding_on_saturday_evening_is_judged_by_the_sunday() {
    LiturgicalCalendar us = us(OpenEvening.SOLEMNITY);

    MassRuling green =
        us.ruling(LocalDateTime.parse("2026-06-20T17:30"), MassKind.WEDDING, "", Leave.NONE);
    MassRuling advent =
        us.ruling(LocalDateTime.parse("2026-12-05T17:30"), MassKind.WEDDING, "", Leave.NONE);

    assertEquals(Verdict.PERMITTED, green.permission().verdict());
    assertEquals(List.of(Colour.WHITE), green.options().get(0).colours());
    assertEquals(Verdict.NOT_PERMITTED, advent.permission().verdict());
    assertEquals("second-sunday-of-advent", advent.day().kept().id());
    assertEquals(List.of(Colour.VIOLET), advent.options().get(0).colours());
    assertEquals(Verdict.PERMITTED, verdict(us, "2026-12-05T11:00", MassKind.WEDDING));
  }

  @Test
  void on_holy_saturday_a_wedding_is_refused_for_the_day_itself() {
    MassRuling wedding =
        us(OpenEvening.SOLEMNITY)
            .ruling(LocalDateTime.parse("2026-04-04T18:00"), MassKind.WEDDING, "", Leave.NONE);

    assertEquals(Verdict.NOT_PERMITTED, wedding.permission().verdict());
    assertEquals("holy-saturday", wedding.day().kept().id());
  }

  private static Verdict verdict(LiturgicalCalendar calendar, String start, MassKind kind) {
    return calendar.ruling(LocalDateTime.parse(start), kind, "", Leave.NONE).permission().verdict();
  }

  private static LiturgicalCalendar us(OpenEvening open) {
    Evenings evenings = new Evenings(EveningRule.PRECEPT, open, LocalTime.of(16, 0));
    return LiturgicalCalendar.of(CalendarSettings.defaultsOf("us").with(evenings), List.of());
  }
}
