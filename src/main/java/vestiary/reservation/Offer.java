package vestiary.reservation;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.pool.PlannedWear;
import vestiary.pool.PooledPiece;

/**
 * A set or piece and whether each of its pieces can be had; a set goes whole or not at all.
 *
 * @param each one for each piece, in the same order
 */
record Offer(Reservable thing, List<Availability> each) {

  /** What takes nothing from others first, then the nearest, then by code. */
  static final Comparator<Offer> NEAREST =
      Comparator.comparing((Offer offer) -> !offer.losing().isEmpty())
          .thenComparing(Offer::way)
          .thenComparing(offer -> offer.thing().code());

  Offer {
    each = List.copyOf(each);
  }

  /** One of its pieces by itself; empty if it is none of them. */
  Optional<Offer> alone(String piece) {
    for (int at = 0; at < each.size(); at++) {
      PooledPiece one = thing.pieces().get(at);
      if (one.code().equals(piece)) {
        return Optional.of(
            new Offer(new Reservable(piece, false, List.of(one)), List.of(each.get(at))));
      }
    }
    return Optional.empty();
  }

  String code() {
    return thing.code();
  }

  boolean isFree() {
    return findKept().isEmpty();
  }

  /** What keeps the first of its pieces that cannot be had; empty if all can. */
  Optional<Availability.Kept> findKept() {
    return each.stream()
        .filter(Availability.Kept.class::isInstance)
        .map(Availability.Kept.class::cast)
        .findFirst();
  }

  /** All its pieces that can be had. */
  List<Availability.Free> free() {
    return each.stream().flatMap(one -> one.findFree().stream()).toList();
  }

  /** What plans have its pieces do, which a hold takes the place of. */
  List<PlannedWear> displaced() {
    return free().stream().flatMap(one -> one.displaced().stream()).toList();
  }

  /** Those of them that are for other Masses. */
  List<PlannedWear> losing() {
    return free().stream().flatMap(one -> one.losing().stream()).toList();
  }

  /** How far the farthest of its pieces lies. */
  Duration way() {
    return free().stream()
        .map(Availability.Free::way)
        .max(Comparator.naturalOrder())
        .orElse(Duration.ZERO);
  }

  /** Where its main piece lies before it is carried; empty if it cannot be had. */
  Stream<Availability.Free> main() {
    return free().stream().filter(one -> one.piece().equals(thing.main().code()));
  }
}
