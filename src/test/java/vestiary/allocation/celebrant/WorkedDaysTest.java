package vestiary.allocation.celebrant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.allocation.WenlowValley.HT;
import static vestiary.allocation.WenlowValley.PP;
import static vestiary.allocation.WenlowValley.SA;
import static vestiary.allocation.WenlowValley.SJ;
import static vestiary.allocation.WenlowValley.SM;
import static vestiary.allocation.WenlowValley.at;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import vestiary.allocation.WenlowValley;
import vestiary.allocation.solver.Solvers;
import vestiary.allocation.solver.Work;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;

/** Days of an invented cluster, worked out by hand. */
class WorkedDaysTest {

  private static final Priest TARNWICK = priest(1, Priest.NO_BOUND_OF_HIS_OWN);
  private static final Priest ILVERTON = priest(2, Priest.NO_BOUND_OF_HIS_OWN);

  /** Retired: one Mass a day. */
  private static final Priest OAKHALLOW = priest(3, 1);

  private static final MassToServe AT_SJ = mass(1, SJ, "2026-12-06T08:00", TARNWICK);
  private static final MassToServe AT_PP = mass(2, PP, "2026-12-06T08:30", ILVERTON);
  private static final MassToServe AT_HT = mass(3, HT, "2026-12-06T10:30", TARNWICK);
  private static final MassToServe AT_SA = mass(4, SA, "2026-12-06T10:45", ILVERTON);
  private static final MassToServe IN_THE_EVENING = mass(5, HT, "2026-12-06T17:30", OAKHALLOW);
  private static final MassToServe AT_SM = mass(6, SM, "2026-12-06T09:45", ILVERTON);

  @Test
  void greeting_road_and_vesting_part_two_masses() {
    assertEquals(Optional.of(at("2026-12-06T09:48")), earliest(AT_SJ, HT));
    assertEquals(Optional.of(at("2026-12-06T10:28")), earliest(AT_PP, SA));
    assertEquals(Optional.of(at("2026-12-06T10:24")), earliest(AT_PP, SM));
    assertEquals(Optional.of(at("2026-12-06T10:04")), earliest(AT_SJ, SM));
  }

  @Test
  void the_sunday_as_it_is_needs_no_change() {
    Question question = question(AT_SJ, AT_PP, AT_HT, AT_SA, IN_THE_EVENING);

    Proposal proposal = DivideMasses.divide(question, Solvers.best(), Work.of(5));

    assertEquals(0, proposal.values().changes());
    assertTrue(proposal.proven());
  }

  @Test
  void one_mass_more_finds_nobody_as_things_stand_and_each_has_his_reason() {
    Question question = sunday();
    Map<PriestId, Timetable> timetables = Timetable.all(question, asTheyAre());

    WhyNot.Before first = before(timetables.get(TARNWICK.id()));
    WhyNot.Before second = before(timetables.get(ILVERTON.id()));
    WhyNot third = timetables.get(OAKHALLOW.id()).findWhyNot(AT_SM).orElseThrow();

    assertEquals(at("2026-12-06T10:04"), first.earliest());
    assertEquals(at("2026-12-06T10:24"), second.earliest());
    WhyNot.TooMany many = (WhyNot.TooMany) third;
    assertEquals(2, many.number());
    assertEquals(1, many.most());
    assertTrue(many.own());
    assertEquals(List.of(IN_THE_EVENING.stay()), many.others());
  }

  @Test
  void its_ways_out_are_another_hour_an_exchange_and_the_church_nearby() {
    WaysOut out = new WaysOut(sunday(), asTheyAre());

    List<WaysOut.OtherTime> times =
        out.otherTimes(AT_SM, at("2026-12-06T06:00"), at("2026-12-06T21:00"));
    WaysOut.Neighbour nearest = out.neighbours(AT_SM).get(0);

    assertEquals(new WaysOut.OtherTime(at("2026-12-06T12:25"), TARNWICK.id()), times.get(0));
    assertTrue(times.contains(new WaysOut.OtherTime(at("2026-12-06T12:35"), ILVERTON.id())));
    assertEquals(new WaysOut.Neighbour(AT_SA.id(), Duration.ofMinutes(16)), nearest);
    assertTrue(
        out.exchanges(AT_SM)
            .contains(new WaysOut.Exchange(OAKHALLOW.id(), IN_THE_EVENING.id(), TARNWICK.id())));
  }

  @Test
  void nobody_is_sent_to_a_mass_whose_celebrant_is_away() {
    Absence morning = new Absence(at("2026-12-06T06:00"), at("2026-12-06T12:00"));
    Question question =
        new Question(
            List.of(TARNWICK, ILVERTON.away(morning), OAKHALLOW),
            sunday().masses(),
            List.of(),
            WenlowValley.journeys(),
            Pace.USUAL,
            Duration.ofMinutes(20));

    List<MassId> neighbours =
        new WaysOut(question, asTheyAre())
            .neighbours(AT_SM).stream().map(WaysOut.Neighbour::mass).toList();

    assertEquals(Set.of(AT_SJ.id(), AT_HT.id(), IN_THE_EVENING.id()), Set.copyOf(neighbours));
  }

  @Test
  void the_proposal_exchanges_two_rather_than_leave_one_unserved() {
    Proposal proposal = DivideMasses.divide(sunday(), Solvers.best(), Work.of(5));

    assertEquals(List.of(), proposal.wants());
    assertEquals(Optional.of(OAKHALLOW.id()), proposal.findCelebrant(AT_SM.id()));
  }

  @Test
  void three_masses_at_one_hour_and_two_priests_are_one_too_many_and_the_proof_counts_them() {
    MassToServe one = mass(11, HT, "2026-12-06T10:00", TARNWICK);
    MassToServe two = mass(12, SA, "2026-12-06T10:00", ILVERTON);
    MassToServe three = mass(13, SJ, "2026-12-06T10:30", TARNWICK);
    Question question =
        new Question(
            List.of(TARNWICK, ILVERTON),
            List.of(one, two, three, AT_PP),
            List.of(),
            WenlowValley.journeys(),
            Pace.USUAL,
            Duration.ofMinutes(20));

    Proposal proposal = DivideMasses.divide(question, Solvers.best(), Work.of(5));
    Want want = proposal.wants().get(0);

    assertEquals(Want.Ground.COUNTED, want.ground());
    assertEquals(want.masses().size() - 1, want.most().stream().mapToInt(Want.Most::masses).sum());
    assertEquals(List.of(), WantProof.findObjections(question, want));
    assertFalse(WantProof.findObjections(question, forged(want, List.of(want.mass()))).isEmpty());
    assertFalse(
        WantProof.findObjections(
                question, new Want(want.mass(), want.masses(), List.of(), want.ground()))
            .isEmpty());
  }

  @Test
  void the_eve_of_a_holy_day_counts_with_its_own_date_or_with_the_solemnity() {
    assertTrue(timetable(false).findWhyNot(eve(false)).isEmpty());
    WhyNot.TooMany many = (WhyNot.TooMany) timetable(true).findWhyNot(eve(true)).orElseThrow();

    assertEquals(2, many.number());
    assertTrue(many.own());
  }

  /** He celebrates his jubilee on the holy day itself. */
  private static Timetable timetable(boolean byLiturgy) {
    MassToServe jubilee = mass(21, SA, "2026-12-08T18:30", OAKHALLOW);
    return new Timetable(question(eve(byLiturgy), jubilee), OAKHALLOW, List.of(jubilee));
  }

  private static MassToServe eve(boolean byLiturgy) {
    MassToServe mass = mass(22, HT, "2026-12-07T18:00", TARNWICK);
    LocalDate counted = mass.stay().date().plusDays(byLiturgy ? 1 : 0);
    return new MassToServe(
        mass.stay(),
        new CountedDay(counted, Portion.DAY, byLiturgy, 1),
        Occasion.PRECEPT,
        false,
        "",
        List.of(),
        List.of());
  }

  private static Want forged(Want want, List<MassId> masses) {
    return new Want(want.mass(), masses, want.most(), want.ground());
  }

  private static WhyNot.Before before(Timetable timetable) {
    return (WhyNot.Before) timetable.findWhyNot(AT_SM).orElseThrow();
  }

  private static Optional<Instant> earliest(MassToServe first, ChurchId there) {
    return Pace.USUAL.findEarliest(first.stay(), there, WenlowValley.journeys());
  }

  private static Question sunday() {
    return question(AT_SJ, AT_PP, AT_HT, AT_SA, IN_THE_EVENING, AT_SM);
  }

  private static Map<MassId, PriestId> asTheyAre() {
    Map<MassId, PriestId> given = new HashMap<>();
    for (MassToServe mass : List.of(AT_SJ, AT_PP, AT_HT, AT_SA, IN_THE_EVENING)) {
      given.put(mass.id(), mass.now().get(0));
    }
    return given;
  }

  private static Question question(MassToServe... masses) {
    return new Question(
        List.of(TARNWICK, ILVERTON, OAKHALLOW),
        List.of(masses),
        List.of(),
        WenlowValley.journeys(),
        Pace.USUAL,
        Duration.ofMinutes(20));
  }

  private static Priest priest(int number, int mostADay) {
    return new Priest(
        new PriestId(new UUID(5, number)),
        mostADay,
        new Permitted(2, 3),
        Set.of(),
        Set.of(),
        List.of(),
        Set.of(),
        List.of(HT));
  }

  /** On Sundays and the holy day; all last an hour. */
  private static MassToServe mass(int number, ChurchId church, String start, Priest celebrant) {
    LocalDate date = LocalDateTime.parse(start).toLocalDate();
    Stay stay =
        new Stay(
            new MassId(new UUID(6, number)),
            church,
            date,
            at(start),
            at(start).plus(Duration.ofHours(1)));
    return new MassToServe(
        stay,
        new CountedDay(date, Portion.DAY, true, 1),
        Occasion.PRECEPT,
        false,
        "",
        List.of(celebrant.id()),
        List.of(celebrant.id()));
  }
}
