package vestiary.load;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import vestiary.allocation.flow.Ask;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.vesting.Window;

/**
 * Counts what who-wears-what comes to, whoever made it: the same way for a plan made by hand, by a
 * general library or by the planner. Journeys between the same churches whose hours agree are one.
 */
final class Recount {

  /** Unmet principals, musts and others; third, second and first steps; carriages; minutes. */
  static final int LEVELS = 8;

  private record Stepping(MassId mass, Role role, Step step, int depth) {}

  private record Stay(ChurchId church, Window window, boolean mass) {}

  private record Way(ChurchId from, ChurchId to) {}

  private record Ready(Instant from, Instant latest) {}

  private final Situation situation;
  private final long[] levels = new long[LEVELS];

  private Recount(Situation situation) {
    this.situation = situation;
  }

  /**
   * The levels, in order of weight.
   *
   * @param worn what each need is served with; needs that are not are missing
   */
  static long[] of(Map<Need, Piece> worn, Situation situation) {
    Recount recount = new Recount(situation);
    recount.countUnmetAndSteps(worn);
    recount.countJourneys(worn);
    return recount.levels;
  }

  private void countUnmetAndSteps(Map<Need, Piece> worn) {
    Map<Stepping, Map<PieceKind, Long>> steps = new HashMap<>();
    for (Need need : situation.span().needs()) {
      Ask ask = Ask.of(need, situation);
      Piece piece = worn.get(need);
      int depth = piece == null ? ask.depthWithout() : ask.depth(piece, situation.traits(piece));
      if (depth == Ask.NEVER) {
        levels[need.role() == Role.PRINCIPAL ? 0 : need.isMust() ? 1 : 2]++;
      } else if (depth > 0) {
        Step step = need.ladder().get(depth - 1);
        steps
            .computeIfAbsent(
                new Stepping(need.mass(), need.role(), step, depth), unknown -> new HashMap<>())
            .merge(need.kind(), 1L, Long::sum);
      }
    }
    steps.forEach(
        (key, kinds) ->
            levels[6 - Math.min(3, key.depth())] +=
                kinds.values().stream().mapToLong(Long::longValue).max().orElseThrow());
  }

  private void countJourneys(Map<Need, Piece> worn) {
    Map<Piece, List<Need>> uses = new HashMap<>();
    worn.forEach((need, piece) -> uses.computeIfAbsent(piece, u -> new ArrayList<>()).add(need));
    Map<Way, List<Ready>> journeys = new HashMap<>();
    for (Piece piece : situation.span().pieces()) {
      journeys(piece, uses.getOrDefault(piece, List.of()), journeys);
    }
    journeys.forEach(this::merge);
  }

  private void journeys(Piece piece, List<Need> uses, Map<Way, List<Ready>> journeys) {
    List<Stay> stays =
        Stream.concat(
                uses.stream().map(need -> new Stay(need.church(), need.window(), true)),
                piece.away().stream().map(away -> stay(piece, away)))
            .sorted(Comparator.comparing(stay -> stay.window().setOut()))
            .toList();
    ChurchId at = piece.home();
    Instant free = Instant.MIN;
    for (Stay stay : stays) {
      if (!stay.church().equals(at)) {
        Way way = new Way(at, stay.church());
        Instant latest = stay.window().setOut().minus(time(way));
        if (free.isAfter(latest)) {
          throw new IllegalStateException(piece.code() + " cannot be there by " + stay.window());
        }
        journeys.computeIfAbsent(way, unknown -> new ArrayList<>()).add(new Ready(free, latest));
        at = stay.church();
      }
      free = stay.window().cleared();
    }
  }

  private static Stay stay(Piece piece, Away away) {
    Window window = new Window(away.from(), away.from(), away.until(), away.until());
    return new Stay(piece.home(), window, false);
  }

  private java.time.Duration time(Way way) {
    return situation.span().journeys().find(way.from(), way.to()).orElseThrow();
  }

  private void merge(Way way, List<Ready> journeys) {
    TreeMap<Instant, Integer> departures = new TreeMap<>();
    for (Ready one : journeys.stream().sorted(Comparator.comparing(Ready::latest)).toList()) {
      boolean rides = !departures.isEmpty() && !one.from().isAfter(departures.lastKey());
      if (!rides) {
        departures.put(one.latest(), 1);
      }
    }
    levels[6] += departures.size();
    levels[7] += departures.size() * ((time(way).toSeconds() + 59) / 60);
  }
}
