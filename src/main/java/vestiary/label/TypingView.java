package vestiary.label;

import java.util.List;
import vestiary.web.Frame;

/**
 * Where a code is typed by hand, and what is to go out soon.
 *
 * @param code as it was typed; may be empty
 * @param problem that nothing has that code; empty else
 * @param due what is to be set out in the coming day, by the hour
 */
public record TypingView(Frame frame, String code, String problem, List<Line> due) {

  public TypingView {
    due = List.copyOf(due);
  }

  /**
   * @param code of the set or piece
   * @param by when it is to be set out, for example "18:00"
   * @param whom for whom or for what
   * @param state "still in", or "out 17:38"
   */
  public record Line(String code, String by, String whom, String state) {}
}
