package vestiary.inventory;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class StocktakeLineRows implements PanacheRepositoryBase<StocktakeLineRow, UUID> {

  List<StocktakeLineRow> of(UUID stocktake) {
    return list("stocktakeId", stocktake);
  }

  /** The line of a piece, for nobody else to lock: of two phones the second waits. */
  Optional<StocktakeLineRow> findLocked(UUID stocktake, UUID piece) {
    return find("stocktakeId = ?1 and pieceId = ?2", stocktake, piece)
        .withLock(LockModeType.PESSIMISTIC_WRITE)
        .firstResultOptional();
  }
}
