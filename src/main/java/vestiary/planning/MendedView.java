package vestiary.planning;

import java.util.List;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * The page of a clash that is mended.
 *
 * @param about place and time
 * @param title of the clash as it stood
 */
public record MendedView(
    Frame frame, String about, String title, List<Link> turn, MendingView mending) {

  public MendedView {
    turn = List.copyOf(turn);
  }
}
