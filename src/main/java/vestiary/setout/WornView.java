package vestiary.setout;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * What was worn at a Mass, to be put right.
 *
 * @param over which Mass
 * @param churchId of its church, for who may press
 * @param done what was just done; empty if nothing was
 * @param problem what keeps it from being kept; empty if nothing does
 * @param undo where all is put back as planned; empty if it is so
 * @param action where it is sent; empty before the Mass has begun
 * @param known codes of the pool, for completion
 */
record WornView(
    Frame frame,
    String over,
    String churchId,
    String done,
    String problem,
    List<Link> turn,
    String undo,
    String action,
    List<Line> lines,
    Field besides,
    List<String> known) {

  WornView {
    turn = List.copyOf(turn);
    lines = List.copyOf(lines);
    known = List.copyOf(known);
  }

  /**
   * @param what for example "chasuble HT-W1-C"
   * @param who for whom it lay ready; may be empty
   * @param wornField name of the field that says whether it was worn
   * @param insteadField name of the field that says what was worn in its place
   * @param instead pieces of its kind, the first of them none
   */
  record Line(
      String what,
      String who,
      String wornField,
      boolean worn,
      String insteadField,
      String insteadLabel,
      Choice instead) {}
}
