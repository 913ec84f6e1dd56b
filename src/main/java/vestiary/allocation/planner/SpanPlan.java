package vestiary.allocation.planner;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import vestiary.allocation.flow.Chain;
import vestiary.allocation.flow.FlowModel;
import vestiary.allocation.flow.Measure;
import vestiary.allocation.flow.Roads;
import vestiary.allocation.flow.Slot;
import vestiary.allocation.plan.Contradiction;
import vestiary.allocation.plan.Movement;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Score;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.solver.Answer;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/** Reads a plan out of a solution: which item does what, who wears it, what is carried. */
final class SpanPlan {

  private final FlowModel model;
  private final Situation situation;
  private final Roads roads;
  private final Map<Need, Provision.Worn> held;
  private final List<Contradiction> contradictions;

  SpanPlan(
      FlowModel model,
      Situation situation,
      Roads roads,
      Map<Need, Provision.Worn> held,
      List<Contradiction> contradictions) {
    this.model = model;
    this.situation = situation;
    this.roads = roads;
    this.held = held;
    this.contradictions = contradictions;
  }

  /**
   * The plan of a solution.
   *
   * @param answer carriages, minutes, preferences and changes
   * @param coverage what of each day can be met
   */
  Plan of(Answer answer, List<DayCoverage> coverage, Effort.Counting counting) {
    List<Itinerary> itineraries = new Naming(model, situation).name(model.chains(answer.columns()));
    List<Provision> provisions = new ArrayList<>(held.values());
    List<Itinerary> used = dress(itineraries, provisions);
    provisions.sort(Comparator.comparing(Provision::need));
    List<Movement> movements = new Journeying(model, roads, situation).of(used);
    return new Plan(
        provisions,
        movements,
        score(provisions, movements, answer, counting),
        bounds(coverage, answer),
        contradictions);
  }

  /**
   * The plan of a solution by single pieces, those put together that can ride together.
   *
   * @param least how many carriages there must be at least
   */
  Plan merged(Answer answer, List<DayCoverage> coverage, long least) {
    Plan single = of(answer, coverage, Effort.Counting.CARRIAGES);
    List<Movement> movements = Merging.of(single.movements());
    Score bounds = single.bounds();
    return new Plan(
        single.provisions(),
        movements,
        score(single.provisions(), movements, answer, Effort.Counting.CARRIAGES),
        new Score(bounds.unmet(), bounds.steps(), least, 0, 0, 0),
        contradictions);
  }

  /** Fills in the provisions and answers the itineraries without Masses that come to nothing. */
  private List<Itinerary> dress(List<Itinerary> itineraries, List<Provision> provisions) {
    Dressing dressing = new Dressing(situation);
    Map<Integer, List<Itinerary>> serving = new HashMap<>();
    for (Itinerary itinerary : itineraries) {
      itinerary.legs().stream()
          .filter(Chain.Leg::isMass)
          .forEach(
              leg ->
                  serving.computeIfAbsent(leg.slot(), unknown -> new ArrayList<>()).add(itinerary));
    }
    Map<MassId, Set<String>> worn = new HashMap<>();
    for (int number = 0; number < model.slots(); number++) {
      Slot slot = model.slot(number);
      List<Piece> pieces =
          serving.getOrDefault(number, List.of()).stream()
              .flatMap(itinerary -> itinerary.item().pieces().stream())
              .sorted(Comparator.comparing(Piece::code))
              .toList();
      List<Need> needs = slot.groups().stream().flatMap(g -> g.needs().stream()).sorted().toList();
      List<Provision> dressed = dressing.dress(needs, pieces);
      provisions.addAll(dressed);
      worn.put(
          slot.mass(),
          dressed.stream()
              .flatMap(one -> one.findPiece().stream())
              .map(Piece::code)
              .collect(Collectors.toSet()));
    }
    return itineraries.stream().map(one -> withoutIdling(one, worn)).toList();
  }

  private Itinerary withoutIdling(Itinerary itinerary, Map<MassId, Set<String>> worn) {
    List<Chain.Leg> legs =
        itinerary.legs().stream()
            .filter(leg -> !leg.isMass() || isWorn(itinerary, leg, worn))
            .toList();
    if (!itinerary.due().isEmpty()) {
      return itinerary.with(legs);
    }
    int last = IntStream.range(0, legs.size()).filter(at -> legs.get(at).isMass()).max().orElse(-1);
    return itinerary.with(legs.subList(0, last + 1));
  }

  private boolean isWorn(Itinerary itinerary, Chain.Leg leg, Map<MassId, Set<String>> worn) {
    Set<String> codes = worn.get(model.slot(leg.slot()).mass());
    return itinerary.item().pieces().stream().anyMatch(piece -> codes.contains(piece.code()));
  }

  private Score score(
      List<Provision> provisions,
      List<Movement> movements,
      Answer answer,
      Effort.Counting counting) {
    boolean byPieces = counting == Effort.Counting.PIECES;
    List<Movement> carriages = movements.stream().filter(Movement::isCarriage).toList();
    return new Score(
        Tally.unmet(provisions),
        Tally.steps(provisions),
        byPieces ? answer.values()[0] : carriages.size(),
        byPieces ? answer.values()[1] : carriages.stream().mapToLong(this::minutes).sum(),
        answer.values()[2],
        answer.values()[3]);
  }

  private long minutes(Movement movement) {
    long seconds = roads.between(roads.place(movement.from()), roads.place(movement.to()));
    return (seconds + 59) / 60;
  }

  private Score bounds(List<DayCoverage> coverage, Answer answer) {
    List<Long> least = new ArrayList<>();
    for (Measure measure : Measure.coverage()) {
      least.add(coverage.stream().mapToLong(day -> day.bounds()[measure.ordinal()]).sum());
    }
    long[] bounds = answer.bounds();
    return new Score(
        least.subList(0, 3),
        Tally.sum(least.subList(3, 6), Tally.steps(held.values())),
        bounds[0],
        bounds[1],
        bounds[2],
        bounds[3]);
  }
}
