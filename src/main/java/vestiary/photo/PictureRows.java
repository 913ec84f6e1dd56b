package vestiary.photo;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;

@ApplicationScoped
class PictureRows implements PanacheRepositoryBase<PictureRow, UUID> {

  void keep(UUID photo, boolean small, byte[] jpeg) {
    PictureRow row = new PictureRow();
    row.photoId = photo;
    row.small = small;
    row.jpeg = jpeg;
    persist(row);
  }
}
