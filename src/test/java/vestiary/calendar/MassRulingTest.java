package vestiary.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;

class MassRulingTest {

  private final LiturgicalCalendar us =
      LiturgicalCalendar.of(CalendarSettings.defaultsOf("us"), List.of());

  /** GIRM 355: the weekday, or one of the memorials listed. */
  @Test
  void a_mass_of_the_day_offers_each_celebration_in_its_own_colour() {
    MassRuling ruling = ruling("2026-01-20T08:00", MassKind.OF_THE_DAY);

    assertEquals(
        List.of("tuesday-week-2-ordinary-time", "fabian", "sebastian"),
        ruling.options().stream().map(option -> option.celebration().id()).toList());
    assertEquals(List.of(Colour.GREEN), ruling.options().get(0).colours());
    assertEquals(List.of(Colour.RED), ruling.find("sebastian").orElseThrow().colours());
    assertTrue(ruling.find("agnes").isEmpty());
  }

  @Test
  void a_wedding_keeps_the_celebration_of_the_day_for_its_choice() {
    MassRuling wedding = ruling("2026-06-20T14:00", MassKind.WEDDING);

    assertEquals("saturday-week-11-ordinary-time", wedding.options().get(0).celebration().id());
    assertEquals(List.of(Colour.WHITE), wedding.options().get(0).colours());
  }

  @Test
  void a_funeral_on_a_sunday_of_advent_is_refused_with_what_to_do() {
    Permission permission = ruling("2026-12-06T10:00", MassKind.FUNERAL).permission();

    assertEquals(Verdict.NOT_PERMITTED, permission.verdict());
    assertEquals(
        "Not on Sundays of Advent, Lent and Easter: the funeral is held outside Mass, and a"
            + " Mass for the dead said later.",
        permission.sentence());
    assertEquals("GIRM 380", permission.source());
  }

  @Test
  void a_votive_mass_on_a_memorial_says_whose_judgement_would_allow_it() {
    Permission permission =
        us.ruling(at("2026-06-05T18:00"), MassKind.VOTIVE, "sacred-heart", Leave.NONE).permission();

    assertEquals(Verdict.NOT_PERMITTED, permission.verdict());
    assertTrue(permission.sentence().contains("unless the rector or the celebrant judges"));
  }

  @Test
  void the_lords_own_liturgies_are_offered_on_their_days_alone() {
    assertEquals("lords-supper", firstOf("2026-04-02T19:00", MassKind.LORDS_SUPPER));
    assertEquals("chrism-mass", firstOf("2026-03-31T11:00", MassKind.CHRISM));
    assertEquals("easter-vigil", firstOf("2026-04-04T21:00", MassKind.EASTER_VIGIL));
    assertEquals(Verdict.NOT_PERMITTED, verdict("2026-04-09T19:00", MassKind.LORDS_SUPPER));
    assertEquals(Verdict.NOT_PERMITTED, verdict("2026-04-11T21:00", MassKind.EASTER_VIGIL));
  }

  /** UNLY 21; Paschale solemnitatis 46, 78: after nightfall and before dawn, in the evening. */
  @Test
  void the_liturgies_of_the_triduum_are_refused_at_the_wrong_half_of_the_day() {
    assertEquals(Verdict.PERMITTED, verdict("2026-04-05T04:00", MassKind.EASTER_VIGIL));
    assertEquals(Verdict.NOT_PERMITTED, verdict("2026-04-05T21:00", MassKind.EASTER_VIGIL));
    assertEquals(Verdict.NOT_PERMITTED, verdict("2026-04-04T09:00", MassKind.EASTER_VIGIL));
    assertEquals(Verdict.NOT_PERMITTED, verdict("2026-04-02T09:00", MassKind.LORDS_SUPPER));
  }

  /** A red title on a Sunday of Ordinary Time is red in that church alone (UNLY 59 I.4). */
  @Test
  void a_titular_changes_the_colour_of_the_parish_mass_in_its_church() {
    LiturgicalCalendar church =
        LiturgicalCalendar.of(
            CalendarSettings.defaultsOf("us"), List.of(new Proper.Titular("lawrence")));

    MassRuling own = church.ruling(at("2025-08-10T10:00"), MassKind.OF_THE_DAY, "", Leave.NONE);

    assertEquals("lawrence", own.options().get(0).celebration().id());
    assertEquals(Rank.SOLEMNITY, own.options().get(0).celebration().rank());
    assertEquals("Title of this church; UNLY 59 I.4 c", own.day().kept().source());
    assertEquals(
        "nineteenth-sunday-in-ordinary-time", firstOf("2025-08-10T10:00", MassKind.OF_THE_DAY));
  }

  private String firstOf(String start, MassKind kind) {
    return ruling(start, kind).options().get(0).celebration().id();
  }

  private Verdict verdict(String start, MassKind kind) {
    return ruling(start, kind).permission().verdict();
  }

  private MassRuling ruling(String start, MassKind kind) {
    return us.ruling(at(start), kind, "", Leave.NONE);
  }

  private static LocalDateTime at(String start) {
    return LocalDateTime.parse(start);
  }
}
