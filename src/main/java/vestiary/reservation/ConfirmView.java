package vestiary.reservation;

import java.util.List;
import vestiary.web.ClashMark;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * What is about to be set aside, and what that takes from others.
 *
 * @param enters whether the Mass is entered in the schedule with it
 * @param carried everything that the form sends
 * @param back to the choice
 * @param losing what plans lose, each a whole sentence
 * @param arising what falls short by it
 * @param mended what falls short no more
 */
record ConfirmView(
    Frame frame,
    String title,
    String lead,
    boolean enters,
    List<Hidden> carried,
    Link back,
    List<SetAsideView.Ware> wares,
    List<String> losing,
    List<Finding> arising,
    List<Finding> mended) {

  ConfirmView {
    carried = List.copyOf(carried);
    wares = List.copyOf(wares);
    losing = List.copyOf(losing);
    arising = List.copyOf(arising);
    mended = List.copyOf(mended);
  }

  /** Whether nobody else is touched by it. */
  public boolean harmless() {
    return losing.isEmpty() && arising.isEmpty();
  }

  record Finding(ClashMark mark, String sentence) {}
}
