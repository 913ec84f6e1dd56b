package vestiary.planning;

import java.util.List;

/**
 * What mends clashes, and what was done about them. The room of remedies knows it, which stands on
 * this one and on the planner.
 */
public interface MendClashes {

  /**
   * What a press says beside its place in the list; each is empty if it is not said.
   *
   * @param fingerprint of the remedy that was read
   * @param sentence of the remedy that was read
   * @param person who takes the substitute, where one is accepted
   */
  record Press(String fingerprint, String sentence, String person) {

    /** Nothing beside the place. */
    public static final Press PLAIN = new Press("", "", "");
  }

  /** What mends a clash, best first; empty where pieces play no part or nothing does. */
  List<OfferedRemedy> offered(Clash clash, SpanToCheck span);

  /** What was done about a clash and is not undone, the newest first; and what left it behind. */
  List<AppliedRemedy> applied(String clash);

  /**
   * Applies a remedy; once it holds, doing it again changes nothing.
   *
   * @param place in the list, from 1
   * @throws vestiary.problem.Refused if there is no such clash or place, or what was read is not
   *     offered any more
   */
  AppliedRemedy apply(String clash, String place, Press press);

  /**
   * Puts back what was before; once that is done, doing it again changes nothing.
   *
   * @throws vestiary.problem.Refused if nothing was ever applied there, or something was changed
   *     since that stands in the way
   */
  void undo(String clash, String place);
}
