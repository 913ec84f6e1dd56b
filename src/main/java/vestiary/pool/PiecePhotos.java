package vestiary.pool;

import java.util.Collection;
import java.util.List;
import java.util.Map;

/** What photographs there are of a piece, which another room keeps. */
public interface PiecePhotos {

  /** Oldest first. */
  List<Shown> of(String code);

  /**
   * The oldest of each of these pieces that shows the piece itself, by code; none where none is.
   */
  Map<String, Shown> eachOf(Collection<String> codes);

  /**
   * @param address of the picture
   * @param small address of the small one
   * @param care id of the time in care whose cause it shows; empty for a picture of the piece
   */
  record Shown(String address, String small, String care) {}
}
