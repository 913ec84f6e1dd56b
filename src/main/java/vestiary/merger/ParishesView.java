package vestiary.merger;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;

/**
 * The parishes, and the merging of one into another.
 *
 * @param done what was just done; empty if nothing was
 * @param rows those that stand, then those that were merged
 * @param from which can be merged; empty where there are not two
 * @param noted what was decreed and done, newest first
 */
public record ParishesView(
    Frame frame,
    String done,
    String problem,
    List<Row> rows,
    Choice from,
    Choice into,
    Field since,
    Field note,
    List<String> noted) {

  public ParishesView {
    rows = List.copyOf(rows);
    noted = List.copyOf(noted);
  }

  /**
   * @param about churches and goods, or where it went
   */
  public record Row(String name, String about) {}
}
