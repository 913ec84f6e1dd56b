package vestiary.photo;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.UUID;

@ApplicationScoped
class PhotoRows implements PanacheRepositoryBase<PhotoRow, UUID> {

  /** Oldest first. */
  List<PhotoRow> ofPieces(Collection<UUID> pieces) {
    return list("pieceId in ?1 order by addedAt, id", pieces);
  }
}
