package vestiary.assigning;

import java.util.List;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * What a proposal would change, before anything is.
 *
 * @param lead what it comes to, in sentences
 * @param all what naming all of them at one press sends; empty where nothing changes
 * @param shares of each priest as things are and as they would be
 */
record ProposalView(
    Frame frame,
    String title,
    String lead,
    String how,
    List<Link> turn,
    List<Changed> changes,
    List<String> all,
    List<Wanting> wants,
    List<ShareThen> shares,
    String sharesNote,
    String back) {

  /**
   * One Mass that gets another celebrant.
   *
   * @param instead for example "in place of Father Ambrose Tarnwick"; empty if nobody was named
   * @param why in sentences
   * @param value what naming him sends
   */
  record Changed(
      String when,
      String what,
      String celebrant,
      String instead,
      List<String> why,
      String value,
      String address) {}

  /**
   * One Mass that nobody takes.
   *
   * @param named who is named now although he cannot; often empty
   * @param proof why, in sentences
   * @param priests each with the one reason why he cannot
   * @param ways what can be done, most natural first
   */
  record Wanting(
      String when,
      String what,
      String named,
      List<String> proof,
      List<Reason> priests,
      List<Way> ways,
      String address) {}

  record Reason(String priest, String why) {}

  /**
   * A way out.
   *
   * @param values what doing it at one press sends; empty if a person does it elsewhere
   */
  record Way(String sentence, Link more, List<String> values) {}

  record ShareThen(CelebrantsView.Share now, CelebrantsView.Share then) {}
}
