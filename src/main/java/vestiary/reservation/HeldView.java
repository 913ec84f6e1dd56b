package vestiary.reservation;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Ribbon;

/**
 * What is set aside, day by day and church by church.
 *
 * @param done what was just done; may be empty
 * @param undo where that is undone, or where it is given up again; without an address if nowhere
 */
record HeldView(
    Frame frame,
    String title,
    String lead,
    String done,
    Undo undo,
    List<Link> turn,
    Choice church,
    List<Hidden> carried,
    List<Day> days) {

  HeldView {
    turn = List.copyOf(turn);
    carried = List.copyOf(carried);
    days = List.copyOf(days);
  }

  /**
   * @param churchId whose sacristan may press it
   */
  record Undo(String address, String text, String churchId) {
    static final Undo NONE = new Undo("", "", "");
  }

  record Day(String title, List<Church> churches) {
    Day {
      churches = List.copyOf(churches);
    }
  }

  record Church(String name, List<Line> lines) {
    Church {
      lines = List.copyOf(lines);
    }
  }

  /**
   * @param state held or out
   * @param about who holds it for what until when
   * @param lost what care or a remedy has taken from it; may be empty
   * @param release where it is given up; empty if it cannot be
   */
  record Line(
      String code,
      Ribbon ribbon,
      String what,
      String state,
      String about,
      String lost,
      String release,
      String churchId) {}
}
