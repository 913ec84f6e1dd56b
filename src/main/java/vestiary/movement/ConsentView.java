package vestiary.movement;

import java.util.List;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * What one owner is asked for one Mass.
 *
 * @param over whose the pieces are
 * @param title for example "Mass at Saint Anne on Tuesday 8 December, 18:30"
 * @param pieces one line a set
 * @param state not asked yet, or what he said
 * @param problem why what was pressed was not done; usually empty
 * @param address where presses are sent to
 * @param version that is sent with an answer
 * @param offered the plan made after a no; without address if there is none
 */
public record ConsentView(
    Frame frame,
    String over,
    String title,
    List<Link> turn,
    List<String> pieces,
    String state,
    String problem,
    String address,
    int version,
    Link offered) {

  public ConsentView {
    turn = List.copyOf(turn);
    pieces = List.copyOf(pieces);
  }
}
