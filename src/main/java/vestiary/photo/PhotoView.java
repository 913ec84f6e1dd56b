package vestiary.photo;

import java.util.List;
import vestiary.pool.PiecePhotos;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * The photographs of a piece, and the form for another.
 *
 * @param title for example "Photographs of HT-W1-C"
 * @param done what was just done; may be empty
 * @param photo what is wrong with the one that was sent, if anything
 * @param church id of the one where the piece is at home
 * @param action where a new one is sent
 */
record PhotoView(
    Frame frame,
    String title,
    String done,
    Field photo,
    Link back,
    String church,
    String action,
    List<PiecePhotos.Shown> photos) {

  PhotoView {
    photos = List.copyOf(photos);
  }
}
