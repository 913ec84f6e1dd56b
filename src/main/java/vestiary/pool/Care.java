package vestiary.pool;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * A time in which a piece cannot be used: at the cleaner, being mended, lent outside, restored.
 *
 * @param from first moment
 * @param ends the moment it is over, or none for until further notice
 */
public record Care(UUID id, String piece, Instant from, List<Instant> ends, String reason) {

  public Care {
    ends = List.copyOf(ends);
  }

  public Optional<Instant> findEnd() {
    return ends.stream().findFirst();
  }

  /** Whether the piece is away at that moment. */
  boolean isAt(Instant moment) {
    return !from.isAfter(moment) && !isOverAt(moment);
  }

  boolean isOverAt(Instant moment) {
    return findEnd().filter(end -> !end.isAfter(moment)).isPresent();
  }

  static Care of(OccupationRow row, String code) {
    return new Care(
        row.id, code, row.starts, row.ends == null ? List.of() : List.of(row.ends), row.reason);
  }
}
