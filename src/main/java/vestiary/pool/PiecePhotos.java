package vestiary.pool;

import java.util.List;

/** What photographs there are of a piece, which another room keeps. */
public interface PiecePhotos {

  /** Oldest first. */
  List<Shown> of(String code);

  /**
   * @param address of the picture
   * @param small address of the small one
   * @param care id of the time in care whose cause it shows; empty for a picture of the piece
   */
  record Shown(String address, String small, String care) {}
}
