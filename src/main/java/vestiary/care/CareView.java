package vestiary.care;

import java.util.List;
import vestiary.pool.PiecePhotos;
import vestiary.schedule.PlanFit;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * One time in care: what it is, what it takes from Masses, and how it ends.
 *
 * @param title for example "Chasuble HT-W1-C is in care"
 * @param done what was just done; may be empty
 * @param undo where that is taken back; empty if it cannot be
 * @param what for example "Needs mending: lining torn, from 30 November 2026 until further notice."
 * @param late that it should have been back, in a sentence; may be empty
 * @param lost what it comes to, in a sentence
 * @param masses that lost it, in order of time
 * @param unfit plans that hold and do not fit any more
 * @param end where it is said that it is back; empty if it is over
 * @param press what says so
 * @param church id of the one where the piece is at home
 * @param care id of it, which a further photograph names
 * @param photo that is sent, to the piece's photographs
 */
record CareView(
    Frame frame,
    String title,
    String done,
    String undo,
    String what,
    String late,
    String lost,
    List<String> masses,
    List<PlanFit.Unfit> unfit,
    String end,
    String press,
    String church,
    List<PiecePhotos.Shown> photos,
    String care,
    Field photo,
    Link piece) {

  CareView {
    masses = List.copyOf(masses);
    unfit = List.copyOf(unfit);
    photos = List.copyOf(photos);
  }
}
