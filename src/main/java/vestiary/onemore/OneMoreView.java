package vestiary.onemore;

import java.util.List;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Ribbon;

/**
 * One more has come: what is still at hand for him.
 *
 * @param over which Mass
 * @param lead for example "A concelebrant, at 18:30."
 * @param churchId of the church, for who may press
 * @param done those added so far, the latest first
 * @param problem why nothing was taken; empty if nothing went wrong
 * @param roles to the same for a concelebrant or a deacon
 * @param role that is shown
 * @param action where a way is taken
 * @param ways the nearest to the norms first
 * @param nothing what the norms let him do where nothing is at hand; else empty
 * @param asksHeight whether it is of use to know how tall he is
 */
record OneMoreView(
    Frame frame,
    String over,
    String lead,
    Ribbon ribbon,
    String churchId,
    List<Done> done,
    String problem,
    List<Option> roles,
    List<Link> turn,
    String role,
    String action,
    List<Offer> ways,
    String nothing,
    boolean asksHeight,
    Field height) {

  OneMoreView {
    done = List.copyOf(done);
    roles = List.copyOf(roles);
    turn = List.copyOf(turn);
    ways = List.copyOf(ways);
  }

  record Option(Link link, boolean chosen) {}

  /**
   * @param undo where it is taken back; empty where another came after him
   */
  record Done(String sentence, String at, String undo) {}

  /**
   * @param title for example "In white"
   * @param source the norm, where a step is taken; else empty
   * @param pieces each with its place
   * @param lacking what must come from the cupboard; may be empty
   */
  record Offer(
      String way,
      String title,
      String source,
      List<String> pieces,
      List<String> codes,
      String lacking,
      String press) {
    Offer {
      pieces = List.copyOf(pieces);
      codes = List.copyOf(codes);
    }
  }
}
