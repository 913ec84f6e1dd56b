package vestiary.inventory;

import java.util.List;
import vestiary.web.ClashMark;
import vestiary.web.Frame;

/**
 * The inventories of all churches.
 *
 * @param lead how they stand, in a sentence
 */
record InventoryListView(Frame frame, String lead, String done, List<Row> rows) {

  InventoryListView {
    rows = List.copyOf(rows);
  }

  /**
   * @param id of the church
   * @param mark one that says it is worth knowing, or none
   * @param age in a sentence
   * @param count for example "14 pieces"
   * @param taking address of the stocktake that is under way; empty if none is
   */
  record Row(
      String id,
      String slug,
      String church,
      List<ClashMark> mark,
      String age,
      String count,
      String taking) {

    Row {
      mark = List.copyOf(mark);
    }
  }
}
