package vestiary.allocation;

import java.time.Duration;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Window;

/**
 * Which of the needs one piece can serve one after the other; needs are named by their place in the
 * list. Between churches the piece must be cleared and carried by the next set-out. In one church
 * it stays out: the end of one Mass and a turn by the start of the next will do. Touching is
 * enough.
 *
 * <p>This is a partial order. Journeys closed under shortest ways make it transitive between
 * churches. Within a church it takes set-outs, and likewise clearances, that do not run against the
 * order of the Masses: a set-out of 60 minutes right after a Mass of 30 would begin before that
 * Mass's own, and a piece could be in time for both in turn and yet too late for the second alone.
 * Such a set-out is capped at the earlier Mass's, such a clearance at the later one's; without any,
 * nothing is capped. The condition holds wherever length, turn and the earlier set-out together
 * reach the later set-out, and the same for clearances.
 *
 * <p>Source: R. P. Dilworth, "A decomposition theorem for partially ordered sets" (1950), for what
 * the order is used for; the turn: common practice, no source.
 */
final class Succession {

  private static final long FEW_LOOKS = 16;

  private final Journeys journeys;
  private final int[] place;
  private final boolean allPlaced;
  private final int[] church;
  private final int[] slot;
  private final long[] setOut;
  private final long[] start;
  private final long[] end;
  private final long[] cleared;
  private final long turn;

  Succession(List<Need> needs, Journeys known, Duration turn) {
    List<Window> windows = needs.stream().map(Need::window).toList();
    this.church = new int[needs.size()];
    this.slot = new int[needs.size()];
    this.setOut = windows.stream().mapToLong(w -> Seconds.floor(w.setOut())).toArray();
    this.start = windows.stream().mapToLong(w -> Seconds.floor(w.start())).toArray();
    this.end = windows.stream().mapToLong(w -> Seconds.ceiling(w.end())).toArray();
    this.cleared = windows.stream().mapToLong(w -> Seconds.ceiling(w.cleared())).toArray();
    this.turn = turn.toSeconds();
    this.journeys = known;
    number(needs);
    this.place = needs.stream().mapToInt(need -> known.place(need.church())).toArray();
    this.allPlaced = Arrays.stream(place).noneMatch(at -> at < 0);
    capAll();
  }

  /** Whether a piece that served the one can serve the other next. */
  boolean precedes(int one, int other) {
    if (church[one] == church[other] && end[one] + turn <= start[other]) {
      return true;
    }
    return cleared[one] + journey(one, other) <= setOut[other];
  }

  private long journey(int one, int other) {
    if (church[one] == church[other]) {
      return 0;
    }
    return place[one] < 0 || place[other] < 0
        ? Journeys.NO_WAY
        : journeys.seconds(place[one], place[other]);
  }

  /** Whether no piece can serve both. */
  boolean clash(int one, int other) {
    return !precedes(one, other) && !precedes(other, one);
  }

  /** The needs in an order in which what precedes stands before what follows. */
  List<Integer> inTurn(Collection<Integer> needs) {
    return needs.stream()
        .sorted(
            Comparator.comparing((Integer need) -> setOut[need])
                .thenComparing(need -> start[need])
                .thenComparing(need -> need))
        .toList();
  }

  /** The same number for needs of one church. */
  int church(int need) {
    return church[need];
  }

  /** The same number for needs of one church and window. */
  int slot(int need) {
    return slot[need];
  }

  long setOut(int need) {
    return setOut[need];
  }

  long cleared(int need) {
    return cleared[need];
  }

  /**
   * No journey between churches of the needs is longer, {@link Journeys#NO_WAY} if one is missing.
   * Where comparing their churches would cost more than a few looks at each need, the longest in
   * the cluster has to do.
   */
  long noJourneyIsLonger(int[] needs) {
    int[] first = new int[needs.length];
    int churches = 0;
    BitSet seen = new BitSet();
    for (int need : needs) {
      if (!seen.get(church[need])) {
        seen.set(church[need]);
        first[churches++] = need;
      }
    }
    if (allPlaced
        && journeys.areComplete()
        && churches * (long) churches > needs.length * FEW_LOOKS) {
      return journeys.longest();
    }
    long longest = 0;
    for (int one = 0; one < churches; one++) {
      for (int other = 0; other < churches; other++) {
        longest = Math.max(longest, journey(first[one], first[other]));
      }
    }
    return longest;
  }

  private record Slot(ChurchId church, Window window) {}

  private void number(List<Need> needs) {
    Map<ChurchId, Integer> churches = new HashMap<>();
    Map<Slot, Integer> slots = new HashMap<>();
    for (int need = 0; need < church.length; need++) {
      ChurchId place = needs.get(need).church();
      church[need] = churches.computeIfAbsent(place, unknown -> churches.size());
      slot[need] =
          slots.computeIfAbsent(new Slot(place, needs.get(need).window()), unknown -> slots.size());
    }
  }

  private void capAll() {
    long[] ownSetOut = setOut.clone();
    long[] ownCleared = cleared.clone();
    IntStream.range(0, church.length)
        .boxed()
        .collect(Collectors.groupingBy(need -> church[need]))
        .values()
        .forEach(
            needs -> {
              capSetOuts(needs, ownSetOut);
              capClearances(needs, ownCleared);
            });
  }

  private void capSetOuts(List<Integer> needs, long[] own) {
    PriorityQueue<Integer> running = new PriorityQueue<>(Comparator.comparing(n -> end[n]));
    long latest = Long.MIN_VALUE;
    for (int need : sorted(needs, Comparator.comparing(n -> start[n]))) {
      while (!running.isEmpty() && end[running.peek()] + turn <= start[need]) {
        latest = Math.max(latest, own[running.poll()]);
      }
      setOut[need] = Math.max(own[need], latest);
      running.add(need);
    }
  }

  private void capClearances(List<Integer> needs, long[] own) {
    PriorityQueue<Integer> later =
        new PriorityQueue<>(Comparator.comparing((Integer n) -> start[n]).reversed());
    long earliest = Long.MAX_VALUE;
    for (int need : sorted(needs, Comparator.comparing((Integer n) -> end[n]).reversed())) {
      while (!later.isEmpty() && end[need] + turn <= start[later.peek()]) {
        earliest = Math.min(earliest, own[later.poll()]);
      }
      cleared[need] = Math.min(own[need], earliest);
      later.add(need);
    }
  }

  private static List<Integer> sorted(List<Integer> needs, Comparator<Integer> order) {
    return needs.stream().sorted(order).toList();
  }
}
