package vestiary.photo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import vestiary.pool.PiecePhotos;
import vestiary.pool.ReadPool;

/** Where the photographs of a piece are to be seen. */
@ApplicationScoped
@Transactional
class ReadPhotos implements PiecePhotos {

  private final KeepPhoto photos;
  private final ReadPool pool;

  ReadPhotos(KeepPhoto photos, ReadPool pool) {
    this.photos = photos;
    this.pool = pool;
  }

  @Override
  public List<Shown> of(String code) {
    return photos.of(pool.id(code)).stream().map(photo -> shown(code, photo)).toList();
  }

  static Shown shown(String code, Photo photo) {
    String address = "/vestments/%s/photos/%s".formatted(code, photo.id());
    String care = photo.care().isEmpty() ? "" : photo.care().get(0).toString();
    return new Shown(address, address + "/small", care);
  }
}
