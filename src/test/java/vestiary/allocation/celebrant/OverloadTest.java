package vestiary.allocation.celebrant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.allocation.WenlowValley.HT;
import static vestiary.allocation.WenlowValley.SJ;
import static vestiary.allocation.WenlowValley.SM;
import static vestiary.allocation.WenlowValley.at;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import vestiary.allocation.WenlowValley;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;

/** What is found of those who are named, beside what their timetable says of each Mass alone. */
class OverloadTest {

  private static final int CASES = 3_000;

  private static final Priest TARNWICK =
      new Priest(
          new PriestId(new UUID(5, 1)),
          Priest.NO_BOUND_OF_HIS_OWN,
          new Permitted(2, 3),
          Set.of(),
          Set.of(),
          List.of(),
          Set.of(),
          List.of());

  @Test
  void it_is_found_exactly_where_the_timetable_says_that_he_cannot() {
    int both = 0;
    int tooMany = 0;
    for (int seed = 0; seed < CASES; seed++) {
      Question question = new InventedPriests(seed).few();
      for (Priest bound : question.priests()) {
        Priest priest = alwaysThere(bound);
        List<MassToServe> given =
            question.masses().stream().filter(mass -> mass.now().contains(priest.id())).toList();
        Overload found = Overload.of(question, priest, named(question, priest, given));
        Timetable his = new Timetable(question, priest, given);
        for (MassToServe mass : given) {
          String which = "case %d, %s, %s".formatted(seed, priest.id(), mass.id());
          Optional<WhyNot> why = his.findWhyNot(mass);
          boolean many = why.filter(WhyNot.TooMany.class::isInstance).isPresent();
          assertEquals(why.isPresent() && !many, isInTwoPlaces(found, mass), which);
          assertTrue(!many || isTooMany(found, mass), which);
          assertTrue(why.isPresent() || !isTooMany(found, mass), which);
        }
        both += found.both().size();
        tooMany += found.tooMany().size();
      }
    }
    assertTrue(both > CASES / 10 && tooMany > CASES / 10, both + " and " + tooMany);
  }

  @Test
  void two_liturgies_at_once_overlap_and_what_follows_too_soon_does_not() {
    Overload once = of(stay(1, HT, "2026-12-05T10:30", 105), stay(2, SJ, "2026-12-05T11:00", 60));
    Overload soon = of(stay(1, SJ, "2026-12-06T08:00", 60), stay(2, SM, "2026-12-06T09:45", 60));

    assertTrue(once.both().get(0).overlap());
    Overload.Both tooSoon = soon.both().get(0);
    assertEquals(false, tooSoon.overlap());
    assertEquals(at("2026-12-06T10:04"), ((WhyNot.Before) tooSoon.why()).earliest());
  }

  @Test
  void what_he_can_reach_in_time_is_nothing() {
    Overload none = of(stay(1, SJ, "2026-12-06T08:00", 60), stay(2, SM, "2026-12-06T10:04", 60));

    assertEquals(new Overload(List.of(), List.of()), none);
  }

  @Test
  void two_within_the_leave_are_nothing_and_the_third_on_a_weekday_is_one_too_many() {
    Stay first = stay(1, HT, "2026-12-05T08:30", 30);
    Stay second = stay(2, HT, "2026-12-05T10:30", 105);
    Stay third = stay(3, HT, "2026-12-05T17:00", 60);

    assertEquals(List.of(), of(first, second).tooMany());
    WhyNot.TooMany many = of(third, first, second).tooMany().get(0);
    assertEquals(3, many.number());
    assertEquals(2, many.most());
    assertEquals(List.of(first, second), many.others());
  }

  private static Overload of(Stay... stays) {
    Question question =
        new Question(
            List.of(),
            List.of(),
            List.of(),
            WenlowValley.journeys(),
            Pace.USUAL,
            Duration.ofMinutes(20));
    return Overload.of(
        question,
        TARNWICK,
        Stream.of(stays)
            .map(
                stay ->
                    new Engagement(
                        TARNWICK.id(),
                        stay,
                        new CountedDay(stay.date(), Portion.DAY, false, 1),
                        true,
                        0))
            .toList());
  }

  private static Stay stay(int number, ChurchId church, String start, int minutes) {
    return new Stay(
        new MassId(new UUID(6, number)),
        church,
        LocalDate.parse(start.substring(0, 10)),
        at(start),
        at(start).plus(Duration.ofMinutes(minutes)));
  }

  /** Absences and churches are other clashes, or none. */
  private static Priest alwaysThere(Priest priest) {
    return new Priest(
        priest.id(),
        priest.mostADay(),
        priest.permitted(),
        Set.of(),
        Set.of(),
        List.of(),
        Set.of(),
        List.of());
  }

  private static List<Engagement> named(Question question, Priest priest, List<MassToServe> given) {
    List<Engagement> named = new ArrayList<>(question.engagements(priest));
    given.forEach(mass -> named.add(new Engagement(priest.id(), mass.stay(), mass.day(), true, 0)));
    return named;
  }

  private static boolean isInTwoPlaces(Overload found, MassToServe mass) {
    return found.both().stream()
        .anyMatch(both -> both.first().equals(mass.stay()) || both.second().equals(mass.stay()));
  }

  private static boolean isTooMany(Overload found, MassToServe mass) {
    return found.tooMany().stream().anyMatch(many -> many.day().equals(mass.day()));
  }
}
