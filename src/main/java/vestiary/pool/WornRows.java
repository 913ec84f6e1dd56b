package vestiary.pool;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import vestiary.vesting.MassId;

@ApplicationScoped
class WornRows implements PanacheRepositoryBase<WornRow, UUID> {

  /** What was put right about one Mass. */
  List<WornRow> of(MassId mass) {
    return list("massId = ?1 order by id", mass.value());
  }

  /** What was put right about Masses that began in the half-open span. */
  List<WornRow> between(Instant from, Instant until) {
    return list("wornAt >= ?1 and wornAt < ?2", from, until);
  }

  /** What was put right about one piece. */
  List<WornRow> ofPiece(UUID piece) {
    return list("pieceId", piece);
  }

  /** At once, since a row for the same piece may follow. */
  void deleteOf(MassId mass) {
    delete("massId", mass.value());
  }
}
