package vestiary.plan;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.plan.Hold;
import vestiary.planning.SpanToCheck;
import vestiary.pool.PlannedWear;
import vestiary.pool.PooledPiece;
import vestiary.pool.SetAside;
import vestiary.schedule.DatedMass;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Window;

/**
 * What no plan of a span may touch: the holds of these days, and what the plans of the days before
 * and after have.
 */
final class HoldsAround {

  private final SpanToCheck loaded;
  private final Map<String, ChurchId> starts;
  private final Map<String, PooledPiece> pieces;
  private final Set<MassId> asked;
  private final PlannedDays days;

  /**
   * @param starts where each piece lies when the span begins, by its code
   */
  HoldsAround(SpanToCheck loaded, Map<String, ChurchId> starts) {
    this.loaded = loaded;
    this.starts = starts;
    this.pieces =
        loaded.pieces().stream().collect(Collectors.toMap(PooledPiece::code, Function.identity()));
    this.asked = loaded.asked().stream().map(DatedMass::id).collect(Collectors.toSet());
    this.days = PlannedDays.of(loaded);
  }

  /** In no order that matters. */
  List<Hold> all() {
    List<Hold> holds = new ArrayList<>();
    loaded.taken().setAside().stream()
        .filter(SetAside::isForMass)
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
        .filter(one -> !asked.contains(one.wearer().mass()))
        .map(one -> hold(one.piece(), one.wearer().mass(), one.church(), one.from(), one.until()))
        .filter(this::isOfNeighbours)
        .forEach(holds::add);
    return Stream.of(
            holds.stream().filter(hold -> days.contain(hold.window().setOut())),
            lastBefore(holds).stream(),
            firstAfter().stream())
        .flatMap(some -> some)
        .toList();
  }

  /** What begins within the span goes with the plan that is replaced. */
  private boolean isOfNeighbours(Hold hold) {
    return !days.contain(hold.window().setOut());
  }

  /** What each piece did last before the span, where it has stayed since. */
  private Collection<Hold> lastBefore(List<Hold> holds) {
    Map<String, Hold> last = new TreeMap<>();
    holds.stream()
        .filter(hold -> hold.window().setOut().isBefore(days.from()))
        .sorted(Comparator.comparing(hold -> hold.window().setOut()))
        .forEach(hold -> last.put(hold.piece(), hold));
    last.values()
        .removeIf(hold -> !starts.getOrDefault(hold.piece(), hold.church()).equals(hold.church()));
    return last.values();
  }

  /**
   * Where the plan of the days after has each piece lie when these are over; that it comes there in
   * the last second keeps its journey within these days.
   */
  private Collection<Hold> firstAfter() {
    Map<String, Hold> first = new TreeMap<>();
    loaded.taken().planned().stream()
        .filter(one -> !one.from().isBefore(days.until()) && mayLeave(one.piece()))
        .forEach(one -> first.computeIfAbsent(one.piece(), piece -> resting(one)));
    return first.values();
  }

  private boolean mayLeave(String piece) {
    return pieces.containsKey(piece) && !pieces.get(piece).toPiece().staysHome();
  }

  private Hold resting(PlannedWear next) {
    ChurchId lies = loaded.lies(pieces.get(next.piece()).toPiece(), days.until());
    Instant last = days.until().minusSeconds(1);
    return new Hold(
        next.piece(),
        next.wearer().mass(),
        lies,
        new Window(last, last, days.until(), days.until()));
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
}
