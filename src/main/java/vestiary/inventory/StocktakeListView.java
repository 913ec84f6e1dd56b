package vestiary.inventory;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Frame;

/**
 * All stocktakes, and the form that begins one.
 *
 * @param churches where the visitor may begin one
 * @param rows those under way first, then the newest
 */
record StocktakeListView(Frame frame, Choice churches, List<Row> rows) {

  StocktakeListView {
    rows = List.copyOf(rows);
  }

  /**
   * @param address of the stocktake; empty for one that was made elsewhere
   * @param church its name
   * @param when for example "12 October 2021", or that it is under way
   * @param who closed it; may be empty
   */
  record Row(String address, String church, String when, String who) {}
}
