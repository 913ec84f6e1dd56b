package vestiary.planning;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import vestiary.allocation.Shortage;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;

/** The needs of a shortage where they may be too many to be read out: then they are counted. */
final class LongList {

  /** More than these nobody counts on a page. */
  private static final int MOST_TO_COUNT = 12;

  private static final int NEAREST = 6;

  private final Shortage shortage;

  LongList(Shortage shortage) {
    this.shortage = shortage;
  }

  boolean isLong() {
    return shortage.allClash() && shortage.needed() > MOST_TO_COUNT;
  }

  /** The moments from and until which all of them are in use; empty if there is no such time. */
  List<Instant> allInUse() {
    Instant from =
        shortage.needs().stream()
            .map(need -> need.window().setOut())
            .max(Comparator.naturalOrder())
            .orElseThrow();
    Instant until =
        shortage.needs().stream()
            .map(need -> need.window().cleared())
            .min(Comparator.naturalOrder())
            .orElseThrow();
    return from.isBefore(until) ? List.of(from, until) : List.of();
  }

  /** Those nearest in hour and journey to one that goes without, that one among them. */
  List<Need> nearest(BiFunction<ChurchId, ChurchId, Optional<Duration>> journeys) {
    Need centre = shortage.unserved().get(0);
    return shortage.needs().stream()
        .sorted(
            Comparator.comparing(
                    (Need need) ->
                        Duration.between(centre.window().start(), need.window().start())
                            .abs()
                            .plus(
                                journeys
                                    .apply(centre.church(), need.church())
                                    .orElse(Duration.ofDays(1))))
                .thenComparing(Comparator.naturalOrder()))
        .limit(NEAREST)
        .sorted()
        .toList();
  }
}
