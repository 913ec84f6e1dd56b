package vestiary.allocation;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Piece;

/**
 * Where pieces lie: at home, or from one moment on where they were worn or carried, until the next.
 *
 * @param stops by code of the piece, each in order of time; a piece without any is at home
 */
public record Lying(Map<String, List<Stop>> stops) {

  /** Everything is at home. */
  public static final Lying AT_HOME = new Lying(Map.of());

  public Lying {
    stops =
        stops.entrySet().stream()
            .collect(
                Collectors.toUnmodifiableMap(Map.Entry::getKey, e -> List.copyOf(e.getValue())));
  }

  /** At a church from a moment on. */
  public record Stop(ChurchId church, Instant since) {}

  /** Where a piece lies at a moment; always at home if it never leaves. */
  public ChurchId church(Piece piece, Instant moment) {
    return piece.staysHome() ? piece.home() : church(piece.code(), piece.home(), moment);
  }

  /** Where a piece lies that may leave its home. */
  public ChurchId church(String code, ChurchId home, Instant moment) {
    ChurchId church = home;
    // No stream: a year of many churches asks this a hundred million times.
    for (Stop stop : stops.getOrDefault(code, List.of())) {
      if (!stop.since().isAfter(moment)) {
        church = stop.church();
      }
    }
    return church;
  }
}
