package vestiary.history;

import java.util.List;
import vestiary.web.Frame;

/**
 * What was changed, the newest first.
 *
 * @param about what the list is limited to, in a sentence
 */
record HistoryView(Frame frame, String about, List<Change> changes) {

  HistoryView {
    changes = List.copyOf(changes);
  }

  /**
   * @param when by the cluster's clock
   * @param who the name of the user, as it is now
   * @param deed for example "Piece changed"
   * @param row address of the history of that one thing
   */
  record Change(String when, String who, String deed, String row, List<Field> fields) {
    Change {
      fields = List.copyOf(fields);
    }
  }

  /**
   * @param before empty where there was nothing
   */
  record Field(String name, String before, String after) {}
}
