package vestiary.plan;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.planning.SpanToCheck;
import vestiary.pool.CarriedPiece;
import vestiary.pool.PlannedWear;
import vestiary.pool.PooledPiece;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;
import vestiary.web.Speech;

/** What a plan would change of what is planned now. */
final class PlanDifference {

  private record Way(String piece, UUID to, Instant arriveBy) {}

  private final SpanToCheck span;
  private final PlanResult result;
  private final Map<PlanResult.Person, Set<String>> now = new HashMap<>();
  private final Map<PlanResult.Person, Set<String>> then = new HashMap<>();
  private final int setsMoved;
  private final List<PlanResult.Trip> tripsNow;

  PlanDifference(SpanToCheck span, PlanResult result, List<CarriedPiece> carriedNow) {
    this.span = span;
    this.result = result;
    PlannedDays days = PlannedDays.of(span);
    span.taken().planned().stream()
        .filter(one -> !one.from().isBefore(days.from()) && one.from().isBefore(days.until()))
        .forEach(one -> add(now, person(one), one.piece()));
    result.worn().stream()
        .filter(one -> !one.held())
        .forEach(one -> add(then, one.person(), one.piece()));
    this.setsMoved = setsMoved(carriedNow);
    this.tripsNow = Together.trips(carriedNow);
  }

  /** What each wearer has now, by code. */
  Map<PlanResult.Person, Set<String>> now() {
    return now;
  }

  /** What each wearer would have. */
  Map<PlanResult.Person, Set<String>> then() {
    return then;
  }

  /** The journeys of the plan that holds. */
  List<PlanResult.Trip> tripsNow() {
    return tripsNow;
  }

  /** The journeys there would be; those of the days on either side belong to other plans. */
  List<PlanResult.Trip> tripsThen() {
    PlannedDays days = PlannedDays.of(span);
    return result.trips().stream().filter(trip -> days.contain(trip.arriveBy())).toList();
  }

  /** Whether nothing is planned yet, so that everything would be new. */
  boolean isFirst() {
    return now.isEmpty();
  }

  private static void add(
      Map<PlanResult.Person, Set<String>> map, PlanResult.Person person, String piece) {
    map.computeIfAbsent(person, unknown -> new TreeSet<>()).add(piece);
  }

  private static PlanResult.Person person(PlannedWear one) {
    return new PlanResult.Person(
        one.wearer().mass().value(), one.wearer().role(), one.wearer().ordinal());
  }

  private int setsMoved(List<CarriedPiece> carriedNow) {
    Set<Way> known =
        carriedNow.stream()
            .map(one -> new Way(one.piece(), one.to().value(), one.arriveBy()))
            .collect(Collectors.toSet());
    Map<String, String> sets =
        span.pieces().stream()
            .collect(
                Collectors.toMap(
                    PooledPiece::code,
                    piece -> piece.set().isEmpty() ? piece.code() : piece.set()));
    Set<String> moved = new HashSet<>();
    for (PlanResult.Trip trip : result.trips()) {
      trip.pieces().stream()
          .filter(piece -> !known.contains(new Way(piece, trip.to(), trip.arriveBy())))
          .map(piece -> sets.getOrDefault(piece, piece))
          .forEach(moved::add);
    }
    return moved.size();
  }

  /** Whether a wearer has something now and would have something else. */
  boolean isChanged(PlanResult.Person person) {
    return now.containsKey(person) && !Objects.equals(now.get(person), then.get(person));
  }

  /** One or two sentences. */
  String words() {
    if (now.isEmpty()) {
      return say(
          "Nothing is planned for these days yet: %s dressed, %s.",
          are(then.size(), "wearer"), moves(setsMoved));
    }
    long changed = now.keySet().stream().filter(this::isChanged).count();
    long fresh = then.keySet().stream().filter(person -> !now.containsKey(person)).count();
    if (changed == 0 && fresh == 0 && setsMoved == 0) {
      return say("Nothing changes: it is the same as the plan that holds.");
    }
    List<String> parts = new ArrayList<>();
    if (setsMoved > 0) {
      parts.add(moves(setsMoved));
    }
    if (changed > 0) {
      parts.add(
          say(
              changed == 1 ? word("%s changes") : word("%s change"),
              Speech.count((int) changed, "wearer")));
    }
    if (fresh > 0) {
      parts.add(say("%s new", are((int) fresh, "wearer")));
    }
    return say("Against the plan that holds, %s.", Speech.list(parts));
  }

  /** A sentence if the schedule has changed since the plan was made; else empty. */
  String outdated() {
    Map<MassId, DatedMass> masses =
        span.asked().stream().collect(Collectors.toMap(DatedMass::id, mass -> mass));
    Set<PlanResult.Person> known = new HashSet<>(then.keySet());
    result.worn().forEach(one -> known.add(one.person()));
    result.leftOut().forEach(one -> known.add(one.person()));
    result.unmet().forEach(one -> known.add(one.person()));
    Set<MassId> changed = new HashSet<>();
    result.worn().stream()
        .filter(one -> !isAsPlanned(one, masses.get(new MassId(one.person().mass()))))
        .forEach(one -> changed.add(new MassId(one.person().mass())));
    masses.values().stream()
        .filter(
            mass ->
                span.needs(mass).stream()
                    .map(
                        need ->
                            new PlanResult.Person(need.mass().value(), need.role(), need.ordinal()))
                    .anyMatch(person -> !known.contains(person)))
        .forEach(mass -> changed.add(mass.id()));
    return changed.isEmpty()
        ? ""
        : say(
            "Since this was made, the schedule has changed for %s: plan again.",
            Speech.count(changed.size(), "Mass"));
  }

  private static boolean isAsPlanned(PlanResult.Worn one, DatedMass mass) {
    return mass != null
        && mass.start().toInstant().equals(one.start())
        && mass.church().id().value().equals(one.church());
  }

  private static String are(int number, String noun) {
    return Speech.count(number, noun) + (number == 1 ? " " + say("is") : " " + say("are"));
  }

  private static String moves(int sets) {
    return say(sets == 1 ? word("%s moves") : word("%s move"), Speech.count(sets, "set"));
  }
}
