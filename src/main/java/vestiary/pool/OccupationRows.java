package vestiary.pool;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class OccupationRows implements PanacheRepositoryBase<OccupationRow, UUID> {

  /** Standing care of all pieces that is not over by that moment, by start. */
  List<OccupationRow> careAfter(Instant moment) {
    return list(
        "state = ?1 and standing and (ends is null or ends > ?2) order by starts, id",
        OccupationRow.CARE,
        moment);
  }

  List<OccupationRow> careOf(UUID piece) {
    return list(
        "state = ?1 and standing and pieceId = ?2 order by starts, id", OccupationRow.CARE, piece);
  }

  Optional<OccupationRow> findCare(UUID piece, Instant starts) {
    return find(
            "state = ?1 and standing and pieceId = ?2 and starts = ?3",
            OccupationRow.CARE,
            piece,
            starts)
        .firstResultOptional();
  }

  /** Plans and holds that care breaks: a report of damage is never refused. */
  void displace(UUID piece, Instant from, Instant to) {
    update(
        "standing = false where pieceId = ?1 and state in ('planned', 'held') and standing"
            + " and starts < ?2 and (ends is null or ends > ?3)",
        piece,
        to,
        from);
  }
}
