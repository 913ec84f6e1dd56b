package vestiary.lending;

import java.util.List;
import vestiary.web.Frame;

/**
 * What the cluster lends and borrows.
 *
 * @param lead how many wait for an answer, in a sentence
 * @param mayOffer whether the visitor may offer something
 */
record LendingsView(Frame frame, String lead, List<Part> parts, boolean mayOffer) {

  LendingsView {
    parts = List.copyOf(parts);
  }

  /** Those of one kind, for example "Offered to you". */
  record Part(String title, List<Row> rows) {
    Part {
      rows = List.copyOf(rows);
    }
  }

  /**
   * @param what for example "SS-D1 and SS-W1, five pieces"
   * @param about the other cluster and the days
   * @param note what is to be done or how it ended
   */
  record Row(String address, String what, String about, String note) {}
}
