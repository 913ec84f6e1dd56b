package vestiary.plan;

import java.util.List;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * One set's week, as a picture and in words.
 *
 * @param title for example "HT-W1, 7 to 13 December 2026"
 * @param over what the set is, for example "White set of Holy Trinity"
 * @param lead where it lies and how often it is worn
 * @param events in order of time, one sentence each
 */
public record SetWeekView(
    Frame frame,
    String over,
    String title,
    List<Link> turn,
    String lead,
    SetWeekPicture.Drawing picture,
    List<String> events) {

  public SetWeekView {
    turn = List.copyOf(turn);
    events = List.copyOf(events);
  }
}
