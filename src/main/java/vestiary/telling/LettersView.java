package vestiary.telling;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;

/**
 * What waits to be mailed, what failed and why, and when letters leave.
 *
 * @param lead how it stands, in a sentence or two
 * @param unsent what failed first
 * @param sent the last first, each in a line
 * @param sentOf how many left in the last seven days, in a sentence
 */
record LettersView(
    Frame frame,
    String done,
    String problem,
    String lead,
    List<Unsent> unsent,
    String sentOf,
    List<String> sent,
    Choice weekday,
    Field hour,
    Field officeDays,
    boolean namesPublic) {

  LettersView {
    unsent = List.copyOf(unsent);
    sent = List.copyOf(sent);
  }

  /**
   * @param who whom it is to
   * @param about for example "the week to come"
   * @param isStuck whether it is not tried any more
   * @param sentence how it stands
   * @param address of the letter
   */
  record Unsent(String who, String about, boolean isStuck, String sentence, String address) {}
}
