package vestiary.photo;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/**
 * A photograph of a piece, without its pixels.
 *
 * @param care the time in care whose cause it shows, or none for a picture of the piece itself
 * @param width in pixels
 * @param height in pixels
 */
public record Photo(UUID id, UUID piece, List<UUID> care, int width, int height, Instant addedAt) {

  public Photo {
    care = List.copyOf(care);
  }

  static Photo of(PhotoRow row) {
    return new Photo(
        row.id,
        row.pieceId,
        row.occupationId == null ? List.of() : List.of(row.occupationId),
        row.width,
        row.height,
        row.addedAt);
  }
}
