package vestiary.pool;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import vestiary.allocation.Lying;
import vestiary.vesting.ChurchId;

/** A piece at a church from a moment on, by what was planned, held, carried and cared for. */
record Whereabouts(String piece, ChurchId church, Instant since) {

  /** All of them as the core sees it. */
  static Lying toLying(List<Whereabouts> all) {
    return new Lying(
        all.stream()
            .sorted(Comparator.comparing(Whereabouts::since))
            .collect(
                Collectors.groupingBy(
                    Whereabouts::piece,
                    Collectors.mapping(
                        one -> new Lying.Stop(one.church(), one.since()), Collectors.toList()))));
  }
}
