package vestiary.allocation;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.vesting.Need;

/** The journeys that keep needs from sharing a piece though their windows do not overlap. */
final class LateArrivals {

  private LateArrivals() {}

  /**
   * The pair that is missed by the least, in a list of one; empty if all windows overlap or lie in
   * one church. A pair without a journey comes last.
   */
  static List<LateArrival> first(List<Need> clashing, Journeys journeys) {
    return clashing.stream()
        .flatMap(from -> after(from, clashing).map(to -> arrival(from, to, journeys)))
        .min(
            Comparator.comparing(
                late -> Duration.between(late.due(), late.arrives()), Comparator.naturalOrder()))
        .stream()
        .toList();
  }

  private static Stream<Need> after(Need from, List<Need> needs) {
    return needs.stream()
        .filter(to -> !to.church().equals(from.church()))
        .filter(to -> !from.window().cleared().isAfter(to.window().setOut()));
  }

  private static LateArrival arrival(Need from, Need to, Journeys journeys) {
    Optional<Duration> journey = journeys.find(from.church(), to.church());
    Instant arrives = journey.map(from.window().cleared()::plus).orElse(Instant.MAX);
    return new LateArrival(from, to, arrives, to.window().setOut());
  }
}
