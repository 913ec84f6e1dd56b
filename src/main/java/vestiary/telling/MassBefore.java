package vestiary.telling;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * A Mass as it was, in what people are told of; every part is {@code null} for one that was not
 * there yet.
 *
 * @param celebrant id; {@code null} for nobody
 * @param named ids of concelebrants and deacons who are known by name
 * @param serving ids of those who served by name; {@code null} where it was not noted
 * @param colour the one that was chosen; empty for the usual one
 */
record MassBefore(
    UUID church,
    Instant starts,
    UUID celebrant,
    List<UUID> named,
    List<UUID> serving,
    String colour,
    Boolean cancelled) {

  MassBefore {
    named = named == null ? List.of() : List.copyOf(named);
    serving = serving == null ? null : List.copyOf(serving);
  }

  /** Whether the Mass was entered by the change. */
  boolean absent() {
    return starts == null;
  }

  boolean wasCancelled() {
    return Boolean.TRUE.equals(cancelled);
  }

  Optional<UUID> findCelebrant() {
    return Optional.ofNullable(celebrant);
  }

  /** Whether it is known who served by name. */
  boolean knowsWhoServed() {
    return serving != null;
  }

  /** Whoever was named there, by id; those who served too, where that was noted. */
  List<UUID> people() {
    return Stream.of(Stream.ofNullable(celebrant), named.stream(), served())
        .flatMap(ids -> ids)
        .distinct()
        .toList();
  }

  private Stream<UUID> served() {
    return Stream.ofNullable(serving).flatMap(List::stream);
  }
}
