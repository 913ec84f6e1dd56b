package vestiary.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import vestiary.calendar.Colour;

class WeekDifferenceTest {

  private static final LocalDate MONDAY = LocalDate.of(2026, 12, 7);
  private static final UUID MASS = new UUID(1, 1);
  private static final UUID OAKHALLOW = new UUID(2, 1);
  private static final UUID TARNWICK = new UUID(2, 2);
  private static final LocalDateTime EVENING = LocalDateTime.of(2026, 12, 8, 18, 30);

  private static final ClashSeen SHORT =
      new ClashSeen(
          "shortage-1",
          "decide",
          List.of(MASS),
          "Saint Anne, Tuesday 8 December, 18:30",
          "Three need white, two white sets are there");

  private final MassSeen jubilee =
      mass(
          EVENING,
          Colour.WHITE,
          List.of(OAKHALLOW),
          "three concelebrants",
          List.of("SA-W1", "SA-W2"));

  @Test
  void a_week_that_reads_as_it_did_has_no_changes() {
    assertEquals(List.of(), sentences(week(List.of(jubilee)), week(List.of(jubilee))));
  }

  @Test
  void a_mass_that_is_new_or_gone_is_told() {
    assertEquals(
        List.of("Saint Anne, 18:30: is new."), sentences(week(List.of()), week(List.of(jubilee))));
    assertEquals(
        List.of("Saint Anne, 18:30: is no longer said."),
        sentences(week(List.of(jubilee)), week(List.of())));
  }

  @Test
  void everything_that_changed_of_one_mass_stands_in_one_sentence() {
    MassSeen now =
        mass(
            EVENING.plusDays(1),
            Colour.RED,
            List.of(TARNWICK),
            "four concelebrants",
            List.of("SA-W1"));

    assertEquals(
        List.of(
            "Saint Anne, 18:30: is now on Wednesday 9 December, 18:30, at Saint Anne; the colour is red instead of white; the celebrant is Tarnwick instead of Oakhallow; with him four concelebrants instead of three concelebrants; they wear SA-W1 instead of SA-W1 and SA-W2."),
        sentences(week(List.of(jubilee)), week(List.of(now))));
  }

  @Test
  void what_is_new_in_the_way_and_what_is_no_longer_are_told() {
    assertEquals(
        List.of(
            "New in the way: Saint Anne, Tuesday 8 December, 18:30: Three need white, two white sets are there."),
        sentences(week(List.of(jubilee)), week(List.of(jubilee), SHORT)));
    assertEquals(
        List.of(
            "No longer in the way: Saint Anne, Tuesday 8 December, 18:30: Three need white, two white sets are there."),
        sentences(week(List.of(jubilee), SHORT), week(List.of(jubilee))));
  }

  @Test
  void weeks_that_read_alike_have_one_fingerprint_and_others_have_not() {
    assertEquals(week(List.of(jubilee)).fingerprint(), week(List.of(jubilee)).fingerprint());
    assertNotEquals(
        week(List.of(jubilee)).fingerprint(), week(List.of(jubilee), SHORT).fingerprint());
  }

  private static MassSeen mass(
      LocalDateTime start,
      Colour colour,
      List<UUID> celebrants,
      String company,
      List<String> vestments) {
    return new MassSeen(
        MASS,
        "Saint Anne",
        true,
        start,
        90,
        "The Immaculate Conception",
        colour,
        celebrants,
        false,
        company,
        vestments,
        List.of(),
        List.of());
  }

  private static WeekSeen week(List<MassSeen> masses, ClashSeen... clashes) {
    return new WeekSeen(MONDAY, masses, List.of(clashes));
  }

  private static List<String> sentences(WeekSeen before, WeekSeen now) {
    return new WeekDifference(before, now, id -> id.equals(OAKHALLOW) ? "Oakhallow" : "Tarnwick")
        .changes().stream().map(WeekDifference.Change::sentence).toList();
  }
}
