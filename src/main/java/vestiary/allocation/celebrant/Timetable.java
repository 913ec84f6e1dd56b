package vestiary.allocation.celebrant;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import vestiary.vesting.MassId;

/**
 * What one priest does, and so what else he can do. Advice, proposals, proofs and the looking for
 * clashes all ask here, so that they never say different things.
 */
public final class Timetable {

  private final Question question;
  private final Priest priest;
  private final List<Entry> entries = new ArrayList<>();

  /** What he is engaged for he does beside nothing else, another part in the same Mass included. */
  private record Entry(Stay stay, CountedDay day, boolean counts, boolean engaged) {}

  /** His engagements and nothing else. */
  public Timetable(Question question, Priest priest) {
    this(question, priest, List.of());
  }

  /** His engagements and the Masses that he is given. */
  public Timetable(Question question, Priest priest, List<MassToServe> given) {
    this.question = question;
    this.priest = priest;
    question
        .engagements(priest)
        .forEach(one -> entries.add(new Entry(one.stay(), one.day(), one.counts(), true)));
    given.forEach(one -> entries.add(new Entry(one.stay(), one.day(), true, false)));
    entries.sort(Comparator.comparing((Entry one) -> one.stay().start()));
  }

  /** Of every priest, with what each is given. */
  public static Map<PriestId, Timetable> all(Question question, Map<MassId, PriestId> given) {
    Map<PriestId, Timetable> all = new HashMap<>();
    for (Priest priest : question.priests()) {
      List<MassToServe> his =
          question.masses().stream()
              .filter(mass -> priest.id().equals(given.get(mass.id())))
              .toList();
      all.put(priest.id(), new Timetable(question, priest, his));
    }
    return all;
  }

  /**
   * The one reason why he cannot take a Mass besides all else that he does; empty if he can. The
   * Mass itself, should he have it already, is left aside.
   */
  public Optional<WhyNot> findWhyNot(MassToServe mass) {
    return findAway(mass)
        .or(() -> findNotServed(mass.stay()))
        .or(() -> findElsewhere(mass.stay()))
        .or(() -> findTooMany(mass.id(), mass.day()));
  }

  /** The number that a Mass on a day would have among his that day, itself counted once. */
  public int number(MassId mass, CountedDay day) {
    return others(mass, day).size() + 1;
  }

  /** His other Masses of a day, concelebrated ones included, by start. */
  public List<Stay> others(MassId mass, CountedDay day) {
    return entries.stream()
        .filter(one -> one.counts() && one.day().equals(day) && !one.stay().mass().equals(mass))
        .map(Entry::stay)
        .toList();
  }

  /** How much farther he would drive for a Mass besides all else that he does on its day. */
  public Duration drive(MassToServe mass) {
    List<Stay> others =
        entries.stream()
            .filter(one -> one.day().equals(mass.day()))
            .map(Entry::stay)
            .filter(stay -> !stay.mass().equals(mass.id()))
            .toList();
    List<Stay> with = new ArrayList<>(others);
    with.add(mass.stay());
    Drive drive = new Drive(question.journeys());
    return Duration.ofMinutes(drive.minutes(priest, with) - drive.minutes(priest, others));
  }

  private Optional<WhyNot> findAway(MassToServe mass) {
    return priest.absences().stream()
        .filter(absence -> absence.meets(mass.stay().start(), mass.stay().end()))
        .min(Comparator.comparing(Absence::from))
        .map(WhyNot.Away::new);
  }

  private Optional<WhyNot> findNotServed(Stay stay) {
    return priest.serves(stay) ? Optional.empty() : Optional.of(new WhyNot.NotServed(stay));
  }

  private Optional<WhyNot> findElsewhere(Stay here) {
    return entries.stream()
        .filter(one -> one.engaged() || !one.stay().mass().equals(here.mass()))
        .map(Entry::stay)
        .filter(stay -> !question.pace().goTogether(stay, here, question.journeys()))
        .findFirst()
        .map(stay -> elsewhere(stay, here));
  }

  private WhyNot elsewhere(Stay stay, Stay here) {
    boolean before = stay.start().isBefore(here.end());
    Optional<Duration> way =
        before
            ? question.journeys().find(stay.church(), here.church())
            : question.journeys().find(here.church(), stay.church());
    if (way.isEmpty()) {
      return new WhyNot.NoRoad(stay);
    }
    Pace pace = question.pace();
    return before
        ? new WhyNot.Before(
            stay,
            way.get(),
            pace.findEarliest(stay, here.church(), question.journeys()).orElseThrow())
        : new WhyNot.After(stay, way.get(), latest(here, stay, way.get(), pace));
  }

  /** So as to be ready for what follows, and not too soon after one another. */
  private static Instant latest(Stay here, Stay next, Duration way, Pace pace) {
    Duration length = Duration.between(here.start(), here.end());
    Instant ready = next.start().minus(pace.before()).minus(way).minus(pace.after()).minus(length);
    Instant apart = next.start().minus(pace.leastGap());
    return ready.isBefore(apart) ? ready : apart;
  }

  private Optional<WhyNot> findTooMany(MassId mass, CountedDay day) {
    List<Stay> others = others(mass, day);
    int most = priest.most(day);
    return others.size() < most
        ? Optional.empty()
        : Optional.of(
            new WhyNot.TooMany(
                day,
                others.size() + 1,
                most,
                priest.mostADay() < priest.permitted().most(day),
                others));
  }
}
