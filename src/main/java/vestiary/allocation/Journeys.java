package vestiary.allocation;

import java.time.Duration;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import vestiary.vesting.ChurchId;

/**
 * All journeys of a cluster, each by its shortest way, so that no detour is quicker. They need not
 * take the same time both ways; a pair without any way is not reachable.
 *
 * <p>Source: R. W. Floyd, "Algorithm 97: Shortest path" (1962; from memory).
 */
public final class Journeys {

  // Half of the largest number, so that two of them may be added.
  static final long NO_WAY = Long.MAX_VALUE / 2;

  private final Map<ChurchId, Integer> places = new HashMap<>();
  private final long[][] seconds;
  private final boolean complete;
  private final long longest;

  private Journeys(List<Journey> journeys) {
    journeys.forEach(j -> List.of(j.from(), j.to()).forEach(this::admit));
    seconds = new long[places.size()][places.size()];
    for (int a = 0; a < seconds.length; a++) {
      Arrays.fill(seconds[a], NO_WAY);
      seconds[a][a] = 0;
    }
    journeys.forEach(this::enter);
    shorten();
    complete = Arrays.stream(seconds).flatMapToLong(Arrays::stream).noneMatch(s -> s == NO_WAY);
    longest =
        Arrays.stream(seconds)
            .flatMapToLong(Arrays::stream)
            .filter(time -> time != NO_WAY)
            .max()
            .orElse(0);
  }

  /**
   * The given journeys and every way that can be put together from them. Of two for the same pair
   * the quicker holds. Costs the cube of the number of churches, once.
   */
  public static Journeys of(List<Journey> journeys) {
    return new Journeys(journeys);
  }

  /** The quickest way; zero from a church to itself, known or not; empty if there is none. */
  public Optional<Duration> find(ChurchId from, ChurchId to) {
    long time = seconds(from, to);
    return time == NO_WAY ? Optional.empty() : Optional.of(Duration.ofSeconds(time));
  }

  /** The church's place among these; negative if nothing is known of it. */
  int place(ChurchId church) {
    return places.getOrDefault(church, -1);
  }

  /** Between two places, in seconds. */
  long seconds(int from, int to) {
    return seconds[from][to];
  }

  /** The longest of them, in seconds; zero if there is none. */
  long longest() {
    return longest;
  }

  /** Whether there is a way from each church to each other. */
  boolean areComplete() {
    return complete;
  }

  /** As {@link #find}, in seconds, {@link #NO_WAY} if there is none. */
  long seconds(ChurchId from, ChurchId to) {
    if (from.equals(to)) {
      return 0;
    }
    Integer a = places.get(from);
    Integer b = places.get(to);
    return a == null || b == null ? NO_WAY : seconds[a][b];
  }

  private void admit(ChurchId church) {
    places.putIfAbsent(church, places.size());
  }

  private void enter(Journey journey) {
    long[] row = seconds[places.get(journey.from())];
    int to = places.get(journey.to());
    row[to] = Math.min(row[to], journey.time().toSeconds());
  }

  private void shorten() {
    for (int via = 0; via < seconds.length; via++) {
      for (long[] row : seconds) {
        for (int to = 0; to < row.length; to++) {
          row[to] = Math.min(row[to], Math.min(NO_WAY, row[via] + seconds[via][to]));
        }
      }
    }
  }
}
