package vestiary.plan;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Stream;
import vestiary.planning.SpanToCheck;
import vestiary.schedule.DatedMass;
import vestiary.web.Speech;

/** What a plan would change, sentence by sentence. */
final class DifferenceWords {

  /**
   * One thing that would be otherwise.
   *
   * @param church where the piece is worn, or where the journey leads
   * @param mass the Mass it is about; none for a journey
   */
  record Change(UUID church, List<UUID> mass, Instant when, String sentence) {
    Change {
      mass = List.copyOf(mass);
    }
  }

  private record Way(UUID from, UUID to, String carrier) {}

  private final SpanToCheck span;
  private final PlanDifference difference;
  private final WearerWords wearers;
  private final TripWords words;

  DifferenceWords(SpanToCheck span, PlanDifference difference) {
    this.span = span;
    this.difference = difference;
    this.wearers = new WearerWords(span);
    this.words = new TripWords(span.churches(), span.pieces(), span.cluster().zone());
  }

  /** By church as people list them, then time. */
  List<Change> changes() {
    List<UUID> order = span.churches().stream().map(church -> church.id().value()).toList();
    return Stream.concat(worn(), driven())
        .sorted(
            Comparator.comparing((Change one) -> order.indexOf(one.church()))
                .thenComparing(Change::when)
                .thenComparing(Change::sentence))
        .toList();
  }

  private Stream<Change> worn() {
    Set<PlanResult.Person> all =
        new TreeSet<>(
            Comparator.comparing(PlanResult.Person::mass)
                .thenComparing(PlanResult.Person::role)
                .thenComparing(PlanResult.Person::ordinal));
    all.addAll(difference.now().keySet());
    all.addAll(difference.then().keySet());
    return all.stream().flatMap(person -> worn(person).stream());
  }

  private Optional<Change> worn(PlanResult.Person person) {
    Set<String> now = new TreeSet<>(difference.now().getOrDefault(person, Set.of()));
    Set<String> then = new TreeSet<>(difference.then().getOrDefault(person, Set.of()));
    Set<String> both = new TreeSet<>(now);
    both.retainAll(then);
    now.removeAll(both);
    then.removeAll(both);
    Optional<DatedMass> mass = wearers.findMass(person.mass());
    if (mass.isEmpty() || now.equals(then)) {
      return Optional.empty();
    }
    return Optional.of(
        new Change(
            mass.get().church().id().value(),
            List.of(person.mass()),
            mass.get().start().toInstant(),
            say(
                "%s, Mass at %s: %s",
                Speech.day(mass.get().date()),
                Speech.clock(mass.get().start()),
                worn(now, then, wearers.within(person)))));
  }

  private String worn(Set<String> now, Set<String> then, String who) {
    if (now.isEmpty()) {
      return say("%s for %s, for whom nothing is planned yet.", named(then), who);
    }
    if (then.isEmpty()) {
      return say("%s no longer for %s.", named(now), who);
    }
    String fresh = words.codes(then);
    String old = words.codes(now);
    return fresh.equals(old)
        ? say("%s instead of %s for %s.", named(then), named(now), who)
        : say("%s instead of %s for %s.", fresh, old, who);
  }

  private String named(Set<String> codes) {
    return words.named(List.copyOf(codes));
  }

  private Stream<Change> driven() {
    List<PlanResult.Trip> gone = new ArrayList<>(difference.tripsNow());
    List<PlanResult.Trip> fresh = new ArrayList<>(difference.tripsThen());
    gone.removeIf(one -> fresh.stream().anyMatch(other -> isSame(one, other)));
    fresh.removeIf(one -> difference.tripsNow().stream().anyMatch(other -> isSame(one, other)));
    Map<Way, PlanResult.Trip> old = new HashMap<>();
    gone.forEach(one -> old.putIfAbsent(way(one), one));
    List<Change> changes = new ArrayList<>();
    for (PlanResult.Trip one : fresh) {
      Optional<PlanResult.Trip> was = Optional.ofNullable(old.remove(way(one)));
      was.ifPresent(gone::remove);
      changes.add(driven(one, was.map(before -> moved(one, before)).orElseGet(() -> added(one))));
    }
    gone.forEach(one -> changes.add(driven(one, dropped(one))));
    return changes.stream();
  }

  private static boolean isSame(PlanResult.Trip one, PlanResult.Trip other) {
    return one.id().equals(other.id());
  }

  private static Way way(PlanResult.Trip one) {
    return new Way(one.from(), one.to(), one.carrier());
  }

  private static Change driven(PlanResult.Trip trip, String sentence) {
    return new Change(trip.to(), List.of(), trip.leaveBy(), sentence);
  }

  private String moved(PlanResult.Trip one, PlanResult.Trip before) {
    return say(
        "%s: the drive from %s leaves by %s, not by %s.",
        words.day(one.leaveBy()),
        words.church(one.from()),
        words.clock(one.leaveBy()),
        words.day(one.leaveBy()).equals(words.day(before.leaveBy()))
            ? words.clock(before.leaveBy())
            : words.moment(before.leaveBy()));
  }

  private String added(PlanResult.Trip one) {
    return one.carrier().isEmpty()
        ? say(
            "%s: one drive more, from %s, leaves by %s, with %s.",
            words.day(one.leaveBy()),
            words.church(one.from()),
            words.clock(one.leaveBy()),
            words.codes(one.pieces()))
        : say(
            "%s: %s takes %s along from %s at %s.",
            words.day(one.leaveBy()),
            one.carrier(),
            words.codes(one.pieces()),
            words.church(one.from()),
            words.clock(one.leaveBy()));
  }

  private String dropped(PlanResult.Trip one) {
    return one.carrier().isEmpty()
        ? say(
            "%s: one drive less, from %s at %s.",
            words.day(one.leaveBy()), words.church(one.from()), words.clock(one.leaveBy()))
        : say(
            "%s: %s takes nothing along from %s.",
            words.day(one.leaveBy()), one.carrier(), words.church(one.from()));
  }
}
