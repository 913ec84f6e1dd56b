package vestiary.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** When nobody is left: counted by hand. */
class AttendanceTest {

  private static final Person A = priest("a");
  private static final Person B = priest("b");

  @Test
  void nobody_is_left_only_while_all_are_away_at_one_moment() {
    Attendance early = attendance(away(A, 8, 12), away(B, 12, 16));

    assertFalse(early.isNobodyLeft(hour(0), hour(24)));

    Attendance both = attendance(away(A, 8, 12), away(B, 10, 16));

    assertEquals(List.of(new Attendance.Gap(hour(10), hour(12))), both.gaps(hour(0), hour(24)));
    assertTrue(both.isNobodyLeft(hour(11), hour(13)));
    assertFalse(both.isNobodyLeft(hour(12), hour(13)));
  }

  @Test
  void gaps_that_follow_one_another_without_a_pause_are_one() {
    Attendance all = attendance(away(A, 8, 10), away(A, 10, 12), away(B, 6, 11), away(B, 11, 20));

    assertEquals(List.of(new Attendance.Gap(hour(8), hour(12))), all.gaps(hour(0), hour(24)));
  }

  @Test
  void a_gap_reaches_no_farther_than_the_time_that_is_looked_at() {
    Attendance all =
        attendance(
            new Absence(UUID.randomUUID(), A.id(), hour(0), Absence.UNKNOWN), away(B, 1, 23));

    assertEquals(List.of(new Attendance.Gap(hour(5), hour(6))), all.gaps(hour(5), hour(6)));
  }

  @Test
  void a_cluster_without_priests_of_its_own_has_no_gap() {
    assertEquals(
        List.of(),
        new Attendance(List.of(away(A, 0, 24)), List.of(), List.of()).gaps(hour(0), hour(24)));
  }

  private static Attendance attendance(Absence... absences) {
    return new Attendance(Stream.of(absences).toList(), List.of(A, B), List.of());
  }

  private static Absence away(Person person, int from, int to) {
    return new Absence(UUID.randomUUID(), person.id(), hour(from), hour(to));
  }

  private static Instant hour(int hour) {
    return Instant.EPOCH.plusSeconds(hour * 3600L);
  }

  private static Person priest(String slug) {
    return new Person(UUID.randomUUID(), slug, slug, slug, "Fr", PersonRole.PRIEST, false);
  }
}
