package vestiary.photo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
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

  @Override
  public Map<String, Shown> eachOf(Collection<String> codes) {
    Map<UUID, String> known =
        pool.ids().entrySet().stream()
            .filter(one -> codes.contains(one.getKey()))
            .collect(Collectors.toMap(Map.Entry::getValue, Map.Entry::getKey));
    return photos.ofPieces(known.keySet()).stream()
        .filter(photo -> photo.care().isEmpty())
        .collect(
            Collectors.toMap(
                photo -> known.get(photo.piece()),
                photo -> shown(known.get(photo.piece()), photo),
                (oldest, other) -> oldest));
  }

  static Shown shown(String code, Photo photo) {
    String address = "/vestments/%s/photos/%s".formatted(code, photo.id());
    String care = photo.care().isEmpty() ? "" : photo.care().get(0).toString();
    return new Shown(address, address + "/small", care);
  }
}
