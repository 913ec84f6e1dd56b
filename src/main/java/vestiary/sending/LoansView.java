package vestiary.sending;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * What went out, as a list that can be printed and signed.
 *
 * @param lead how it stands, in a sentence
 * @param open whether what is out alone is shown, and the parish to sift by; no options where
 *     nothing is sifted
 * @param groups the lines under their headings
 * @param nothing said where there are none; empty else
 */
record LoansView(
    Frame frame,
    String title,
    String lead,
    List<Link> turn,
    Choice open,
    Choice parish,
    List<Group> groups,
    String nothing) {

  LoansView {
    turn = List.copyOf(turn);
    groups = List.copyOf(groups);
  }

  /**
   * @param heading for example "Saint Anne"; may be empty
   */
  record Group(String heading, List<Line> lines) {
    Group {
      lines = List.copyOf(lines);
    }
  }

  /**
   * @param item code of the set or piece, and the way to it
   * @param what its pieces, for example "HT-W1-C, white chasuble"
   * @param out when it went, by whom
   * @param back when it came back and who took it in, or when it is due
   * @param overdue whether it should be back
   * @param condition out, and back where something was said
   */
  record Line(
      Link item,
      String what,
      String owner,
      String borrower,
      String out,
      String back,
      boolean overdue,
      String condition) {}
}
