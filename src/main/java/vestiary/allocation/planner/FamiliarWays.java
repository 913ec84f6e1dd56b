package vestiary.allocation.planner;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.plan.Movement;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.PlanProof;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.plan.Tally;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/**
 * Of journeys that are as good, those of the last plan: whatever is worn at the same Masses as
 * before goes the same way with the same person, unless that would take more driving.
 */
final class FamiliarWays {

  private record Way(
      ChurchId from, ChurchId to, Instant leaveBy, Instant arriveBy, String carrier) {
    static Way of(Movement one) {
      return new Way(one.from(), one.to(), one.leaveBy(), one.arriveBy(), one.carrier());
    }
  }

  private final Plan last;
  private final Plan anew;
  private final Situation now;

  private FamiliarWays(Plan last, Plan anew, Situation now) {
    this.last = last;
    this.anew = anew;
    this.now = now;
  }

  /** The plan with its provisions as they are and the old journeys as far as they are as good. */
  static Plan of(Plan last, Plan anew, Situation now) {
    FamiliarWays ways = new FamiliarWays(last, anew, now);
    Plan familiar = ways.plan();
    boolean asGood = familiar.score().compareTo(anew.score()) <= 0;
    return asGood && PlanProof.findObjections(familiar, now).isEmpty() ? familiar : anew;
  }

  private Plan plan() {
    Set<String> same = unmoved();
    Map<Way, List<Movement>> byWay = new LinkedHashMap<>();
    Stream.concat(only(last, same, true), only(anew, same, false))
        .forEach(one -> byWay.computeIfAbsent(Way.of(one), way -> new ArrayList<>()).add(one));
    List<Movement> movements =
        byWay.values().stream()
            .map(FamiliarWays::together)
            .sorted(
                Comparator.comparing(Movement::leaveBy)
                    .thenComparing(Movement::from)
                    .thenComparing(Movement::to)
                    .thenComparing(Movement::carrier))
            .toList();
    return new Plan(
        anew.provisions(),
        movements,
        Tally.of(anew.provisions(), movements, now),
        anew.bounds(),
        anew.contradictions());
  }

  /** Codes of pieces that serve the same needs as before, whole sets at a time. */
  private Set<String> unmoved() {
    Map<String, Set<Need>> then = served(last);
    Map<String, Set<Need>> today = served(anew);
    Map<String, List<Piece>> sets =
        now.span().pieces().stream()
            .collect(
                Collectors.groupingBy(
                    piece -> piece.set().isEmpty() ? " " + piece.code() : piece.set()));
    return sets.values().stream()
        .filter(
            set ->
                set.stream()
                    .map(Piece::code)
                    .allMatch(
                        code ->
                            then.getOrDefault(code, Set.of())
                                .equals(today.getOrDefault(code, Set.of()))))
        .flatMap(Collection::stream)
        .map(Piece::code)
        .collect(Collectors.toSet());
  }

  private static Map<String, Set<Need>> served(Plan plan) {
    Map<String, Set<Need>> served = new HashMap<>();
    for (Provision.Worn one : plan.assignments()) {
      served.computeIfAbsent(one.piece().code(), code -> new HashSet<>()).add(one.need());
    }
    return served;
  }

  /** The journeys of a plan with those of their pieces that are, or are not, among these. */
  private static Stream<Movement> only(Plan plan, Set<String> codes, boolean among) {
    return plan.movements().stream()
        .map(
            one ->
                new Loaded(
                    one,
                    one.pieces().stream()
                        .filter(piece -> codes.contains(piece.code()) == among)
                        .toList()))
        .filter(one -> !one.pieces().isEmpty())
        .map(one -> with(one.movement(), one.pieces(), one.movement().ready()));
  }

  private record Loaded(Movement movement, List<Piece> pieces) {}

  private static Movement together(List<Movement> loads) {
    return with(
        loads.get(0),
        loads.stream()
            .flatMap(one -> one.pieces().stream())
            .sorted(Comparator.comparing(Piece::code))
            .toList(),
        loads.stream().map(Movement::ready).max(Comparator.naturalOrder()).orElseThrow());
  }

  private static Movement with(Movement one, List<Piece> pieces, Instant ready) {
    return new Movement(
        pieces,
        one.from(),
        one.to(),
        ready,
        one.leaveBy(),
        one.arriveBy(),
        one.carrier(),
        one.onAsking());
  }
}
