package vestiary.plan;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.allocation.Span;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Ride;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.plan.Traits;
import vestiary.planning.SpanToCheck;
import vestiary.pool.OwnerPolicy;
import vestiary.pool.PlannedWear;
import vestiary.pool.PooledPiece;
import vestiary.schedule.DatedMass;
import vestiary.vesting.AlbLength;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Wearer;

/**
 * The planner's question for a span. Pieces begin where the days before leave them, and where the
 * plan of the days after has them begin they must end: a plan changes nothing outside its own days.
 */
public final class SituationOf {

  private record Wanted(Wearer wearer, PieceKind kind) {}

  private final SpanToCheck loaded;
  private final Map<MassId, DatedMass> asked;
  private final Map<String, PooledPiece> pieces;
  private final PlannedDays days;
  private final Map<String, ChurchId> starts;
  private final Map<String, Integer> wear;

  private SituationOf(SpanToCheck loaded, Map<String, Integer> wear) {
    this.loaded = loaded;
    this.wear = wear;
    this.asked =
        loaded.asked().stream().collect(Collectors.toMap(DatedMass::id, Function.identity()));
    this.pieces =
        loaded.pieces().stream().collect(Collectors.toMap(PooledPiece::code, Function.identity()));
    this.days = PlannedDays.of(loaded);
    this.starts = starts(loaded, days.from());
  }

  /** The question for the dates that were asked for, where it is not known what was worn. */
  public static Situation span(SpanToCheck loaded) {
    return span(loaded, Map.of());
  }

  /**
   * The question for the dates that were asked for.
   *
   * @param wear how often each piece was worn of late, by its code; of those alike, the one worn
   *     least goes first
   */
  public static Situation span(SpanToCheck loaded, Map<String, Integer> wear) {
    return new SituationOf(loaded, wear).build();
  }

  private Situation build() {
    Span all = loaded.toSpan(loaded.asked());
    Span span = new Span(all.needs(), all.pieces(), all.journeys(), all.policies());
    return new Situation(
        span,
        new HoldsAround(loaded, starts).all(),
        rides(),
        pieces.values().stream().collect(Collectors.toMap(PooledPiece::code, this::traits)),
        asked.values().stream().collect(Collectors.toMap(DatedMass::id, Occasions::of)),
        Map.of(),
        albs(span.needs()),
        last(span.needs()),
        starts);
  }

  /** Of those who are known by name and height. */
  private Map<Wearer, AlbLength> albs(List<Need> needs) {
    return needs.stream()
        .filter(need -> need.kind() == PieceKind.ALB)
        .map(Need::wearer)
        .distinct()
        .collect(
            Collectors.toMap(
                Function.identity(), wearer -> loaded.albLength(asked.get(wearer.mass()), wearer)));
  }

  private static Map<String, ChurchId> starts(SpanToCheck loaded, Instant moment) {
    return loaded.pieces().stream()
        .collect(
            Collectors.toMap(PooledPiece::code, piece -> loaded.lies(piece.toPiece(), moment)));
  }

  /** Those that arrive within the span, from wherever they come. */
  private List<Ride> rides() {
    return Rides.of(
            loaded.masses(),
            loaded.journeys(),
            loaded.cluster().policies().vesting(),
            loaded.attendance())
        .stream()
        .filter(ride -> days.contain(ride.arrives()))
        .toList();
  }

  private Traits traits(PooledPiece piece) {
    return new Traits(
        piece.suit(),
        piece.grade(),
        piece.shade(),
        length(piece.size()),
        piece.ownerPolicy() == OwnerPolicy.ASKING,
        wear.getOrDefault(piece.code(), 0));
  }

  /** Labels say 132, or XL; only centimetres can be compared. */
  private static int length(String size) {
    return size.matches("\\d{2,3}") ? Integer.parseInt(size) : 0;
  }

  private List<Provision> last(List<Need> needs) {
    Map<Wanted, PlannedWear> worn = new HashMap<>();
    for (PlannedWear one : loaded.taken().planned()) {
      if (pieces.containsKey(one.piece())) {
        worn.put(new Wanted(one.wearer(), pieces.get(one.piece()).kind()), one);
      }
    }
    return needs.stream()
        .filter(need -> worn.containsKey(new Wanted(need.wearer(), need.kind())))
        .<Provision>map(need -> worn(need, worn.get(new Wanted(need.wearer(), need.kind()))))
        .toList();
  }

  private Provision.Worn worn(Need need, PlannedWear one) {
    int depth = Math.min(one.depth(), need.ladder().size());
    return new Provision.Worn(need, pieces.get(one.piece()).toPiece(), depth, false);
  }
}
