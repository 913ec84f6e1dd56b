package vestiary.sending;

import java.util.List;
import java.util.Optional;
import vestiary.cluster.Church;
import vestiary.pool.PooledPiece;
import vestiary.schedule.DatedMass;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;

/**
 * Where something goes.
 *
 * @param churches one, or none if outside the cluster
 * @param whom who has it outside the cluster; else empty
 * @param masses the Mass that was named, or none
 */
record Destination(List<Church> churches, String whom, List<DatedMass> masses) {

  Destination {
    churches = List.copyOf(churches);
    masses = List.copyOf(masses);
  }

  Optional<Church> findChurch() {
    return churches.stream().findFirst();
  }

  List<ChurchId> churchIds() {
    return churches.stream().map(Church::id).toList();
  }

  List<MassId> massIds() {
    return masses.stream().map(DatedMass::id).toList();
  }

  /** The parish of the church, or who has it outside. */
  String borrower() {
    return findChurch().map(Church::parish).orElse(whom);
  }

  /** Whether the piece leaves its church. */
  boolean isAwayFrom(PooledPiece piece) {
    return findChurch().filter(church -> church.id().equals(piece.home())).isEmpty();
  }

  /**
   * Whether it is lent: goods belong to the parish that acquired them (CIC 1256), and each parish
   * is a juridic person of its own (CIC 515 §3).
   */
  boolean isLoanOf(PooledPiece piece) {
    return isAwayFrom(piece) && !piece.owner().strip().equalsIgnoreCase(borrower().strip());
  }

  /** For example "Saint Anne", or "the cathedral". */
  String name() {
    return findChurch().map(Church::name).orElse(whom);
  }
}
