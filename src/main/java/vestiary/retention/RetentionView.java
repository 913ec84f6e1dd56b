package vestiary.retention;

import java.util.List;
import vestiary.web.Field;
import vestiary.web.Frame;

/**
 * How long things are kept.
 *
 * @param last when it was last tidied, in a sentence
 */
record RetentionView(Frame frame, String done, String problem, List<Line> lines, String last) {

  RetentionView {
    lines = List.copyOf(lines);
  }

  /**
   * @param days as typed or stored
   * @param reason why usually so long
   * @param going what goes tonight, in a sentence
   */
  record Line(
      String name, String words, int least, int most, Field days, String reason, String going) {}
}
