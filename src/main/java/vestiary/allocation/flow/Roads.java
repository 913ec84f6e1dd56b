package vestiary.allocation.flow;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import vestiary.allocation.Journeys;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Window;

/** Churches by number, and the seconds between them. */
public final class Roads {

  /** Longer than any journey; two of them may be added. */
  public static final long NO_WAY = Long.MAX_VALUE / 8;

  /** Before and after everything, as seconds; a journey may be added to either. */
  public static final long ALWAYS = -NO_WAY;

  public static final long NEVER = NO_WAY;

  private final List<ChurchId> churches;
  private final Map<ChurchId, Integer> places = new HashMap<>();
  private final long[][] seconds;
  private final long turn;

  /**
   * @param known all churches that may be asked about
   * @param turn between two Masses in one church
   */
  public Roads(Collection<ChurchId> known, Journeys journeys, Duration turn) {
    this.turn = turn.toSeconds();
    churches = known.stream().distinct().sorted().toList();
    churches.forEach(church -> places.put(church, places.size()));
    seconds =
        churches.stream()
            .map(
                from ->
                    churches.stream()
                        .mapToLong(
                            to -> journeys.find(from, to).map(Duration::toSeconds).orElse(NO_WAY))
                        .toArray())
            .toArray(long[][]::new);
  }

  public int churches() {
    return churches.size();
  }

  public int place(ChurchId church) {
    return places.get(church);
  }

  public ChurchId church(int place) {
    return churches.get(place);
  }

  /** Seconds of the journey, {@link #NO_WAY} if there is none. */
  public long between(int from, int to) {
    return seconds[from][to];
  }

  /** Seconds between two Masses in one church while the vestments stay out. */
  long turn() {
    return turn;
  }

  /** The first church to and from which this one has journeys, the same for all of a region. */
  int region(int place) {
    int region = 0;
    while (seconds[region][place] == NO_WAY || seconds[place][region] == NO_WAY) {
      region++;
    }
    return region;
  }

  /** The longest journey there is, ways that do not exist left aside. */
  public long longest() {
    long longest = 0;
    for (long[] row : seconds) {
      for (long time : row) {
        longest = time < NO_WAY ? Math.max(longest, time) : longest;
      }
    }
    return longest;
  }

  /** Whether whoever can go somewhere can come back. */
  public boolean leadBothWays() {
    for (int one = 0; one < seconds.length; one++) {
      for (int other = 0; other < one; other++) {
        if (seconds[one][other] == NO_WAY ^ seconds[other][one] == NO_WAY) {
          return false;
        }
      }
    }
    return true;
  }

  /** A Mass's window at its church. */
  public Visit visit(ChurchId church, Window window) {
    return new Visit(
        place(church),
        floor(window.setOut()),
        floor(window.start()),
        ceiling(window.end()),
        ceiling(window.cleared()));
  }

  /** Rounded down, for moments by which something must be ready or gone. */
  public static long floor(Instant instant) {
    return Math.max(ALWAYS, Math.min(NEVER, instant.getEpochSecond()));
  }

  /** Rounded up, for moments from which something is free. */
  public static long ceiling(Instant instant) {
    return Math.max(
        ALWAYS, Math.min(NEVER, instant.getEpochSecond() + (instant.getNano() > 0 ? 1 : 0)));
  }

  /** The moment again. */
  public static Instant instant(long seconds) {
    return seconds <= ALWAYS
        ? Instant.MIN
        : seconds >= NEVER ? Instant.MAX : Instant.ofEpochSecond(seconds);
  }
}
