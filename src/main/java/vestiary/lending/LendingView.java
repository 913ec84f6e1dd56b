package vestiary.lending;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Ribbon;

/**
 * One lending, as one side sees it.
 *
 * @param over whose it is, for example "Offered by Ashmere Coast"
 * @param title what is lent
 * @param state how it stands, in a sentence
 * @param facts the days and where the pieces lie
 * @param told what was said so far, the first first
 * @param doing what the visitor may do about it
 */
record LendingView(
    Frame frame,
    String over,
    String title,
    List<Link> turn,
    String problem,
    String state,
    List<Fact> facts,
    List<Piece> pieces,
    List<String> cautions,
    List<String> told,
    Doing doing) {

  LendingView {
    turn = List.copyOf(turn);
    facts = List.copyOf(facts);
    pieces = List.copyOf(pieces);
    cautions = List.copyOf(cautions);
    told = List.copyOf(told);
  }

  record Fact(String name, String value) {}

  /**
   * @param what for example "dalmatic"
   * @param about size and condition when it was offered
   */
  record Piece(String code, String set, String what, Ribbon ribbon, String owner, String about) {}

  /**
   * @param address of the lending
   * @param answers whether yes and no may be said
   * @param withdraws whether the offer may be taken back
   * @param returns whether the pieces may be said to be back
   * @param church where they are to lie, chosen with the yes
   */
  record Doing(
      String address,
      boolean answers,
      boolean withdraws,
      boolean returns,
      Choice church,
      Field answer,
      Field ending) {}
}
