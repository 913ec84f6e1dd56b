package vestiary.assigning;

import java.util.List;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * Who could celebrate one Mass.
 *
 * @param lead who is named, and whether he can
 * @param effect what the way of counting days changes; often empty
 * @param ways what can be done; empty if somebody can celebrate it
 */
record AdviceView(
    Frame frame,
    String title,
    String what,
    String lead,
    List<Done> done,
    List<Link> turn,
    List<Line> priests,
    List<String> effects,
    List<ProposalView.Way> ways,
    String churchId,
    String back) {

  /**
   * One priest.
   *
   * @param can whether he can take it
   * @param named whether he is the one who is named
   * @param value what naming him sends; empty if he is named already
   */
  record Line(String name, boolean can, boolean named, String sentence, String value) {}
}
