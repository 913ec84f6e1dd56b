package vestiary.allocation.celebrant;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import vestiary.vesting.MassId;

/**
 * What can be done for a Mass that nobody can take as things stand: say it at another time, let two
 * priests change places, go to another church.
 */
public final class WaysOut {

  private static final Duration STEP = Duration.ofMinutes(5);

  private final Question question;
  private final Map<MassId, PriestId> given;
  private final Map<PriestId, Timetable> timetables;

  /**
   * As things stand.
   *
   * @param given who celebrates what
   */
  public WaysOut(Question question, Map<MassId, PriestId> given) {
    this.question = question;
    this.given = new LinkedHashMap<>(given);
    this.timetables = Timetable.all(question, given);
  }

  /** Another start at which a priest could take it, all else staying as it is. */
  public record OtherTime(Instant start, PriestId priest) {}

  /**
   * For each priest the starts nearest to the present one at which he could take the Mass, one
   * earlier and one later where there are such; the nearest first.
   *
   * @param from earliest start, included, on the day that the Mass counts on
   * @param until latest start, included
   */
  public List<OtherTime> otherTimes(MassToServe mass, Instant from, Instant until) {
    List<OtherTime> times = new ArrayList<>();
    for (Priest priest : question.priests()) {
      find(mass, priest, from, until, STEP.negated()).ifPresent(times::add);
      find(mass, priest, from, until, STEP).ifPresent(times::add);
    }
    Instant start = mass.stay().start();
    return times.stream()
        .sorted(
            Comparator.comparing((OtherTime time) -> Duration.between(start, time.start()).abs())
                .thenComparing(OtherTime::start)
                .thenComparing(OtherTime::priest))
        .toList();
  }

  private Optional<OtherTime> find(
      MassToServe mass, Priest priest, Instant from, Instant until, Duration step) {
    Timetable his = timetables.get(priest.id());
    Instant start = mass.stay().start().plus(step);
    while (!start.isBefore(from) && !start.isAfter(until)) {
      if (his.findWhyNot(at(mass, start)).isEmpty()) {
        return Optional.of(new OtherTime(start, priest.id()));
      }
      start = start.plus(step);
    }
    return Optional.empty();
  }

  private static MassToServe at(MassToServe mass, Instant start) {
    Stay stay = mass.stay();
    Duration length = Duration.between(stay.start(), stay.end());
    LocalDate date = stay.date();
    return new MassToServe(
        new Stay(stay.mass(), stay.church(), date, start, start.plus(length)),
        mass.day(),
        mass.occasion(),
        mass.early(),
        mass.language(),
        mass.asked(),
        mass.now());
  }

  /** One takes the Mass, and another takes in his place what he has that day. */
  public record Exchange(PriestId taker, MassId left, PriestId other) {}

  /** All exchanges of one Mass for another that serve both, in the order of the Masses left. */
  public List<Exchange> exchanges(MassToServe mass) {
    List<Exchange> all = new ArrayList<>();
    for (MassToServe left : question.masses()) {
      Optional<PriestId> taker =
          Optional.ofNullable(given.get(left.id())).filter(his -> !left.id().equals(mass.id()));
      if (taker.isPresent() && isFreed(mass, left, taker.get())) {
        for (Priest other : question.priests()) {
          if (!other.id().equals(taker.get())
              && timetables.get(other.id()).findWhyNot(left).isEmpty()) {
            all.add(new Exchange(taker.get(), left.id(), other.id()));
          }
        }
      }
    }
    return all;
  }

  private boolean isFreed(MassToServe mass, MassToServe left, PriestId taker) {
    Map<MassId, PriestId> without = new HashMap<>(given);
    without.remove(left.id());
    without.remove(mass.id());
    return timetables.get(taker).findWhyNot(mass).isPresent()
        && Timetable.all(question, without).get(taker).findWhyNot(mass).isEmpty();
  }

  /** Another Mass that people could go to, and the way there. */
  public record Neighbour(MassId mass, Duration journey) {}

  /**
   * Masses with a celebrant who is not away, at other churches, on the same day, by the way there
   * and then by how near in time. First see whether people can go to a church nearby.
   *
   * <p>Source: Congregation for Divine Worship, Directory for Sunday Celebrations in the Absence of
   * a Priest (1988) 18.
   */
  public List<Neighbour> neighbours(MassToServe mass) {
    return question.masses().stream()
        .filter(other -> isSaid(other) && other.day().equals(mass.day()))
        .filter(other -> !other.stay().church().equals(mass.stay().church()))
        .flatMap(
            other ->
                question.journeys().find(mass.stay().church(), other.stay().church()).stream()
                    .map(way -> new Neighbour(other.id(), way)))
        .sorted(
            Comparator.comparing(Neighbour::journey)
                .thenComparing(neighbour -> between(mass, neighbour))
                .thenComparing(Neighbour::mass))
        .toList();
  }

  /** Where whoever is named cannot come, people would go in vain. */
  private boolean isSaid(MassToServe mass) {
    return Optional.ofNullable(given.get(mass.id()))
        .flatMap(question::find)
        .filter(priest -> !priest.isAway(mass.stay().start(), mass.stay().end()))
        .isPresent();
  }

  private Duration between(MassToServe mass, Neighbour neighbour) {
    Instant start = question.find(neighbour.mass()).orElseThrow().stay().start();
    return Duration.between(mass.stay().start(), start).abs();
  }
}
