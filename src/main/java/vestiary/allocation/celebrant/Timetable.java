package vestiary.allocation.celebrant;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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

  private Timetable(Question question, Priest priest, Stream<Entry> all) {
    this.question = question;
    this.priest = priest;
    all.sorted(Comparator.comparing((Entry one) -> one.stay().start())).forEach(entries::add);
  }

  /** His engagements and nothing else. */
  public Timetable(Question question, Priest priest) {
    this(question, priest, List.of());
  }

  /** His engagements and the Masses that he is given. */
  public Timetable(Question question, Priest priest, List<MassToServe> given) {
    this(
        question,
        priest,
        Stream.concat(
            question.engagements(priest).stream()
                .map(one -> new Entry(one.stay(), one.day(), one.counts(), true)),
            given.stream().map(one -> new Entry(one.stay(), one.day(), true, false))));
  }

  /**
   * What he is named for, and no engagement of the question: whichever of it is asked about is left
   * aside.
   */
  public static Timetable asNamed(Question question, Priest priest, List<Engagement> named) {
    return new Timetable(
        question,
        priest,
        named.stream().map(one -> new Entry(one.stay(), one.day(), one.counts(), false)));
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
    return findWhyNot(mass.stay(), mass.day());
  }

  /** The same of a Mass at that place and time that counts on that day. */
  public Optional<WhyNot> findWhyNot(Stay stay, CountedDay day) {
    return findHindrance(stay).or(() -> findTooMany(stay.mass(), day));
  }

  /** The same of a liturgy that is no Mass, which can. 905 does not count. */
  public Optional<WhyNot> findHindrance(Stay stay) {
    return findAway(stay).or(() -> findNotServed(stay)).or(() -> findElsewhere(stay));
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

  private Optional<WhyNot> findAway(Stay stay) {
    return priest.absences().stream()
        .filter(absence -> absence.meets(stay.start(), stay.end()))
        .min(Comparator.comparing(Absence::from))
        .map(WhyNot.Away::new);
  }

  private Optional<WhyNot> findNotServed(Stay stay) {
    return priest.serves(stay) ? Optional.empty() : Optional.of(new WhyNot.NotServed(stay));
  }

  private Optional<WhyNot> findElsewhere(Stay here) {
    Apart apart = new Apart(question);
    return entries.stream()
        .filter(one -> one.engaged() || !one.stay().mass().equals(here.mass()))
        .flatMap(one -> apart.find(one.stay(), here).stream())
        .findFirst();
  }

  /** Whether he would have more on that day than he may or will, a Mass itself counted once. */
  Optional<WhyNot.TooMany> findTooMany(MassId mass, CountedDay day) {
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
