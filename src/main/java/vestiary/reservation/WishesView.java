package vestiary.reservation;

import java.util.List;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/** What is asked for, with the buttons of those who answer. */
record WishesView(
    Frame frame, String lead, String problem, List<Link> turn, List<Line> open, List<Line> over) {

  WishesView {
    turn = List.copyOf(turn);
    open = List.copyOf(open);
    over = List.copyOf(over);
  }

  /**
   * @param sentence who asks for what
   * @param answered what was answered, or that nobody has yet, or that it is free now
   * @param address of what is done with it
   * @param keeperId whose sacristan answers
   * @param churchId whose sacristan asked
   * @param waits whether it can still be taken back
   * @param isFree whether it was told that it is free
   */
  record Line(
      String code,
      String sentence,
      String answered,
      String address,
      String keeperId,
      String churchId,
      boolean waits,
      boolean isFree,
      Link setAside) {}

  /** The form by which something is asked for. */
  record Form(
      Frame frame,
      String title,
      String lead,
      String problem,
      List<Hidden> carried,
      Field note,
      Link back,
      String churchId) {
    Form {
      carried = List.copyOf(carried);
    }
  }
}
