package vestiary.history;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * What was changed, the newest first.
 *
 * @param title what the list is about
 * @param action where the list can be narrowed
 * @param who by whom, or by anybody
 * @param from first day, ISO 8601; empty for no bound
 * @param to last day, included; likewise
 * @param turn to what the list is about, and to other lists
 * @param newer the page before; {@link Link#NONE} on the first
 * @param older the page after; {@link Link#NONE} on the last
 * @param files all of it, for a spreadsheet or a program; none for whoever may not take it
 */
record HistoryView(
    Frame frame,
    String title,
    String action,
    Choice who,
    Field from,
    Field to,
    List<Link> turn,
    List<Line> changes,
    Link newer,
    Link older,
    List<Link> files) {

  HistoryView {
    turn = List.copyOf(turn);
    changes = List.copyOf(changes);
    files = List.copyOf(files);
  }

  /**
   * @param when by the cluster's clock
   * @param who what whoever made it is called now, and on which shared device
   * @param what for example "Mass at Saint Anne, 8 December 2026, 18:30 changed"
   * @param address of the history of that one thing
   */
  record Line(String when, String who, String what, String address, List<Change.Field> fields) {
    Line {
      fields = List.copyOf(fields);
    }
  }
}
