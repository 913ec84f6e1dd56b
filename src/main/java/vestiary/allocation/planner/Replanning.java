package vestiary.allocation.planner;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.flow.Roads;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Ride;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.solver.Solver;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/**
 * A plan made anew only where something has changed: whatever the plan has for days that no change
 * touches is set aside as if a sacristan had done so.
 */
final class Replanning {

  private final Situation before;
  private final Plan last;
  private final Situation now;
  private final Roads roads;
  private final Map<Need, Provision> provisions;

  Replanning(Situation before, Plan last, Situation now) {
    this.before = before;
    this.last = last;
    this.now = now;
    this.roads = Planning.roads(now);
    this.provisions =
        last.provisions().stream().collect(Collectors.toMap(Provision::need, Function.identity()));
  }

  /** The plan, with scores and bounds for all of it. */
  Plan plan(Effort effort, Solver solver) {
    Situation after = now.withLast(last.provisions());
    return FamiliarWays.of(last, anew(after, effort, solver), after);
  }

  private Plan anew(Situation after, Effort effort, Solver solver) {
    List<Provision> kept = kept();
    if (kept.isEmpty()) {
      return new Planner(solver).plan(after, effort);
    }
    return new Planning(after, Settled.keeping(kept, after, roads), effort, solver).plan();
  }

  private List<Provision> kept() {
    boolean apart =
        before.span().policies().equals(now.span().policies())
            && roads.leadBothWays()
            && sameJourneys();
    if (!apart) {
      return List.of();
    }
    Set<String> changed = changedPieces();
    List<Provision> kept = new ArrayList<>();
    for (Days day : Days.of(now.span().needs(), roads)) {
      if (isUntouched(day, changed)) {
        day.needs().forEach(need -> kept.add(provisions.get(need)));
      }
    }
    return kept;
  }

  private boolean sameJourneys() {
    for (int from = 0; from < roads.churches(); from++) {
      for (int to = 0; to < roads.churches(); to++) {
        boolean same =
            before
                .span()
                .journeys()
                .find(roads.church(from), roads.church(to))
                .equals(now.span().journeys().find(roads.church(from), roads.church(to)));
        if (!same) {
          return false;
        }
      }
    }
    return true;
  }

  /** Codes of pieces that are new, gone or otherwise than before. */
  private Set<String> changedPieces() {
    Set<Piece> differing = new HashSet<>(before.span().pieces());
    now.span().pieces().forEach(piece -> toggle(differing, piece));
    Set<Hold> holds = new HashSet<>(before.holds());
    now.holds().forEach(hold -> toggle(holds, hold));
    Stream<String> moved =
        now.span().pieces().stream()
            .filter(piece -> !before.start(piece).equals(now.start(piece)))
            .map(Piece::code);
    return Stream.of(differing.stream().map(Piece::code), holds.stream().map(Hold::piece), moved)
        .flatMap(codes -> codes)
        .collect(Collectors.toSet());
  }

  private static <T> void toggle(Collection<T> all, T one) {
    if (!all.remove(one)) {
      all.add(one);
    }
  }

  private boolean isUntouched(Days day, Set<String> changed) {
    List<Provision> own = new ArrayList<>();
    for (Need need : day.needs()) {
      Provision provision = provisions.get(need);
      if (provision == null
          || provision.findPiece().filter(p -> changed.contains(p.code())).isPresent()) {
        return false;
      }
      own.add(provision);
    }
    // Whoever goes without would be glad of any piece that has become free.
    boolean wanting = own.stream().anyMatch(one -> one.depth() > 0 || one.findPiece().isEmpty());
    return !(wanting && !changed.isEmpty())
        && hadTheSameNeeds(day)
        && within(before.rides(), day).equals(within(now.rides(), day))
        && holdsWithin(before, day).equals(holdsWithin(now, day));
  }

  private boolean hadTheSameNeeds(Days day) {
    return before.span().needs().stream()
            .filter(need -> isWithin(need.window().setOut(), day))
            .count()
        == day.needs().size();
  }

  private static List<Ride> within(List<Ride> rides, Days day) {
    return rides.stream().filter(ride -> isWithin(ride.departs(), day)).toList();
  }

  private static Set<Hold> holdsWithin(Situation situation, Days day) {
    return situation.holds().stream()
        .filter(hold -> isWithin(hold.window().setOut(), day))
        .collect(Collectors.toSet());
  }

  private static boolean isWithin(Instant moment, Days day) {
    long seconds = Roads.floor(moment);
    return day.extent().from() <= seconds && seconds < day.extent().until();
  }
}
