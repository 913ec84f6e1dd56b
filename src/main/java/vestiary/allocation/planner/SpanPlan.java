package vestiary.allocation.planner;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import vestiary.allocation.flow.Chain;
import vestiary.allocation.flow.FlowModel;
import vestiary.allocation.flow.Item;
import vestiary.allocation.flow.Measure;
import vestiary.allocation.flow.Roads;
import vestiary.allocation.flow.Slot;
import vestiary.allocation.plan.Contradiction;
import vestiary.allocation.plan.Movement;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Score;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.plan.Tally;
import vestiary.allocation.solver.Answer;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;

/** Reads a plan out of a solution: which item does what, who wears it, what is carried. */
final class SpanPlan {

  private final FlowModel model;
  private final Situation situation;
  private final Roads roads;
  private final Collection<Provision> settled;
  private final List<Contradiction> contradictions;
  private final List<DayCoverage> coverage;

  /**
   * @param settled provisions that are in every plan
   * @param coverage what of each day can be met
   */
  SpanPlan(
      FlowModel model,
      Situation situation,
      Roads roads,
      Collection<Provision> settled,
      List<Contradiction> contradictions,
      List<DayCoverage> coverage) {
    this.model = model;
    this.situation = situation;
    this.roads = roads;
    this.settled = settled;
    this.contradictions = contradictions;
    this.coverage = coverage;
  }

  /**
   * The plan of a solution.
   *
   * @param answer carriages, minutes, preferences and changes
   */
  Plan of(Answer answer, Effort.Counting counting) {
    List<Provision> provisions = new ArrayList<>(settled);
    List<Movement> movements = movements(answer, provisions);
    Score score = Tally.of(provisions, movements, situation);
    return new Plan(
        provisions,
        movements,
        counting == Effort.Counting.PIECES ? byPieces(score, answer) : score,
        bounds(answer),
        contradictions);
  }

  /**
   * The plan of a solution by single pieces, those put together that can ride together.
   *
   * @param least how many carriages there must be at least
   */
  Plan merged(Answer answer, long least) {
    List<Provision> provisions = new ArrayList<>(settled);
    List<Movement> movements = Merging.of(movements(answer, provisions));
    Score bounds = bounds(answer);
    return new Plan(
        provisions,
        movements,
        Tally.of(provisions, movements, situation),
        new Score(bounds.unmet(), bounds.steps(), least, 0, 0, 0),
        contradictions);
  }

  /**
   * What Masses of which nothing is open come to, which is the same in every plan and in no model.
   */
  static Score ofSettledMasses(
      Collection<Need> open, Collection<Provision> settled, Situation situation) {
    Set<MassId> asking = open.stream().map(Need::mass).collect(Collectors.toSet());
    return Tally.of(
        settled.stream().filter(one -> !asking.contains(one.need().mass())).toList(),
        List.of(),
        situation);
  }

  /** Fills in the provisions. */
  private List<Movement> movements(Answer answer, List<Provision> provisions) {
    List<Itinerary> itineraries = new Naming(model, situation).name(model.chains(answer.columns()));
    List<Itinerary> used = dress(answer, itineraries, provisions);
    provisions.sort(Comparator.comparing(Provision::need));
    return new Journeying(model, roads, situation).of(used);
  }

  /** Fills in the provisions and answers the itineraries without what comes to nothing. */
  private List<Itinerary> dress(
      Answer answer, List<Itinerary> itineraries, List<Provision> provisions) {
    Map<Integer, List<Item>> serving = new HashMap<>();
    for (Itinerary itinerary : itineraries) {
      itinerary.legs().stream()
          .filter(Chain.Leg::isMass)
          .forEach(
              leg ->
                  serving
                      .computeIfAbsent(leg.slot(), unknown -> new ArrayList<>())
                      .add(itinerary.item()));
    }
    LastWorn last = new LastWorn(situation);
    Map<Integer, Set<String>> worn = new HashMap<>();
    for (int number = 0; number < model.slots(); number++) {
      Slot slot = model.slot(number);
      List<Item> items = new ArrayList<>(serving.getOrDefault(number, List.of()));
      items.sort(Comparator.comparingInt(this::worn).thenComparing(Item::code));
      List<Provision> dressed =
          Dressing.dress(
              model, situation, last, slot, model.outfits(number, answer.columns()), items);
      provisions.addAll(dressed);
      worn.put(
          number,
          dressed.stream()
              .flatMap(one -> one.findPiece().stream())
              .map(piece -> piece.code())
              .collect(Collectors.toSet()));
    }
    Idling idling = new Idling(model, worn);
    return itineraries.stream().map(idling::without).toList();
  }

  /** Of those alike, the one worn least is handed out first. */
  private int worn(Item item) {
    return situation.traits(item.pieces().get(0)).worn();
  }

  private static Score byPieces(Score score, Answer answer) {
    return new Score(
        score.unmet(),
        score.steps(),
        answer.values()[0],
        answer.values()[1],
        score.preferences(),
        score.changes());
  }

  private Score bounds(Answer answer) {
    List<Long> least = new ArrayList<>();
    for (Measure measure : Measure.coverage()) {
      least.add(coverage.stream().mapToLong(day -> day.bounds()[measure.ordinal()]).sum());
    }
    // Which set is best taken apart was not asked, so that nothing is known of what comes after.
    boolean isParted = coverage.stream().anyMatch(day -> !day.parted().isEmpty());
    long[] bounds = isParted ? new long[4] : answer.bounds();
    List<Need> open = coverage.stream().flatMap(day -> day.day().needs().stream()).toList();
    return Tally.sum(
        new Score(
            least.subList(0, 3), least.subList(3, 6), bounds[0], bounds[1], bounds[2], bounds[3]),
        ofSettledMasses(open, settled, situation));
  }
}
