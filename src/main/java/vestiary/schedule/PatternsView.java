package vestiary.schedule;

import java.util.List;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * The regular Mass times, church by church.
 *
 * @param done what was just done; empty if nothing was
 * @param lead how many there are
 * @param churches all of the cluster, in the order in which people list them
 * @param ended those that are over; they stay readable
 */
public record PatternsView(
    Frame frame, String done, String lead, List<OfChurch> churches, List<Row> ended) {

  public PatternsView {
    churches = List.copyOf(churches);
    ended = List.copyOf(ended);
  }

  /**
   * @param add a new one here
   */
  public record OfChurch(String name, String place, List<Row> rows, Link add) {
    public OfChurch {
      rows = List.copyOf(rows);
    }
  }

  /**
   * @param pattern in plain words, with its page
   * @param about who celebrates, which Mass, a note; may be empty
   */
  public record Row(Link pattern, String about) {}
}
