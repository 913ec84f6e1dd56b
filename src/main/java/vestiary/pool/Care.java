package vestiary.pool;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * A time in which a piece cannot be used: at the cleaner, being mended, lent outside, restored.
 *
 * @param from first moment
 * @param ends the moment it is over, or none for until further notice
 * @param promised the moment it was to be over, or none if nobody said; past the one that is late
 */
public record Care(
    UUID id,
    String piece,
    Instant from,
    List<Instant> ends,
    String reason,
    CareKind kind,
    List<Instant> promised) {

  public Care {
    ends = List.copyOf(ends);
    promised = List.copyOf(promised);
  }

  /** Of no kind in particular, with nothing promised. */
  public Care(UUID id, String piece, Instant from, List<Instant> ends, String reason) {
    this(id, piece, from, ends, reason, CareKind.OTHER, List.of());
  }

  public Optional<Instant> findEnd() {
    return ends.stream().findFirst();
  }

  /** When it should have been back, if that has passed and nobody has said that it is. */
  public Optional<Instant> findMissed() {
    return ends.isEmpty() ? promised.stream().findFirst() : Optional.empty();
  }

  /** Whether the piece is away at that moment. */
  public boolean isAt(Instant moment) {
    return !from.isAfter(moment) && !isOverAt(moment);
  }

  public boolean isOverAt(Instant moment) {
    return findEnd().filter(end -> !end.isAfter(moment)).isPresent();
  }

  static Care of(OccupationRow row, String code) {
    return of(row, code, row.ends == null ? List.of() : List.of(row.ends));
  }

  /** Nobody has said that it is back, and it should have been. */
  static Care late(OccupationRow row, String code) {
    return of(row, code, List.of());
  }

  /** What is lent and not back is told to be late wherever its reason is told. */
  Care overdue() {
    return new Care(id, piece, from, ends, reason + say(", and overdue"), kind, promised);
  }

  private static Care of(OccupationRow row, String code, List<Instant> ends) {
    List<Instant> promised = row.ends == null ? List.of() : List.of(row.ends);
    return new Care(row.id, code, row.starts, ends, row.reason, row.careKind(), promised);
  }
}
