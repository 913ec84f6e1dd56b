package vestiary.plan;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.Span;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.plan.Traits;
import vestiary.planning.SpanToCheck;
import vestiary.pool.OwnerPolicy;
import vestiary.pool.PlannedWear;
import vestiary.pool.PooledPiece;
import vestiary.pool.SetAside;
import vestiary.schedule.DatedMass;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Wearer;
import vestiary.vesting.Window;

/**
 * The planner's question for a span. What is planned for the days on either side is held: a plan
 * changes nothing outside its own days.
 */
public final class SituationOf {

  private record Wanted(Wearer wearer, PieceKind kind) {}

  private final SpanToCheck loaded;
  private final Map<MassId, DatedMass> asked;
  private final Map<String, PooledPiece> pieces;

  private SituationOf(SpanToCheck loaded) {
    this.loaded = loaded;
    this.asked =
        loaded.asked().stream().collect(Collectors.toMap(DatedMass::id, Function.identity()));
    this.pieces =
        loaded.pieces().stream().collect(Collectors.toMap(PooledPiece::code, Function.identity()));
  }

  /** The question for the dates that were asked for. */
  public static Situation span(SpanToCheck loaded) {
    return new SituationOf(loaded).build();
  }

  private Situation build() {
    Span all = loaded.toSpan(loaded.asked());
    Span span =
        new Span(
            all.needs(),
            all.pieces().stream().map(this::withAbsences).toList(),
            all.journeys(),
            all.policies());
    return new Situation(
        span,
        holds(),
        Rides.of(loaded.asked(), loaded.journeys()),
        pieces.values().stream().collect(Collectors.toMap(PooledPiece::code, SituationOf::traits)),
        asked.values().stream().collect(Collectors.toMap(DatedMass::id, Occasions::of)),
        Map.of(),
        last(span.needs()));
  }

  private List<Hold> holds() {
    List<Hold> holds = new ArrayList<>();
    loaded.taken().setAside().stream()
        .filter(SituationOf::isForMass)
        .map(
            one ->
                hold(
                    one.piece(),
                    one.masses().get(0),
                    one.churches().get(0),
                    one.from(),
                    one.until()))
        .forEach(holds::add);
    loaded.taken().planned().stream()
        .filter(one -> !asked.containsKey(one.wearer().mass()))
        .filter(this::isOfNeighbours)
        .map(one -> hold(one.piece(), one.wearer().mass(), one.church(), one.from(), one.until()))
        .forEach(holds::add);
    return holds;
  }

  /** What begins within the span goes with the plan that is replaced. */
  private boolean isOfNeighbours(PlannedWear one) {
    PlannedDays days = PlannedDays.of(loaded);
    return one.from().isBefore(days.from()) || !one.from().isBefore(days.until());
  }

  private static boolean isForMass(SetAside one) {
    return !one.masses().isEmpty()
        && !one.churches().isEmpty()
        && one.until().isBefore(Instant.MAX);
  }

  private Hold hold(String piece, MassId mass, ChurchId church, Instant from, Instant until) {
    return new Hold(piece, mass, church, window(mass, from, until));
  }

  private Window window(MassId mass, Instant from, Instant until) {
    return loaded.masses().stream()
        .filter(one -> one.id().equals(mass))
        .findFirst()
        .filter(one -> !one.start().toInstant().isBefore(from))
        .filter(one -> !one.end().toInstant().isAfter(until))
        .map(one -> new Window(from, one.start().toInstant(), one.end().toInstant(), until))
        .orElseGet(() -> new Window(from, from, until, until));
  }

  private Piece withAbsences(Piece piece) {
    List<Away> out =
        loaded.taken().setAside().stream()
            .filter(one -> one.piece().equals(piece.code()) && !isForMass(one))
            .map(one -> new Away(one.from(), one.until(), one.word()))
            .toList();
    if (out.isEmpty()) {
      return piece;
    }
    return new Piece(
        piece.code(),
        piece.kind(),
        piece.colours(),
        piece.home(),
        piece.staysHome(),
        piece.set(),
        Stream.concat(piece.away().stream(), out.stream()).toList(),
        piece.make());
  }

  private static Traits traits(PooledPiece piece) {
    return new Traits(
        piece.suit(),
        piece.grade(),
        piece.shade(),
        length(piece.size()),
        piece.ownerPolicy() == OwnerPolicy.ASKING,
        0);
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
