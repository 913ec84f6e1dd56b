package vestiary.movement;

import java.util.List;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * One journey, for whoever is asked to make it.
 *
 * @param over for example "Tuesday 8 December"
 * @param title for example "Holy Trinity to Saint Anne"
 * @param turn to the list of journeys
 * @param state one or two sentences: who was asked, what he said
 * @param problem why what was pressed was not done; usually empty
 * @param facts in order: leave by, be there by, how; empty if nothing is carried any more
 * @param labels what rides; each is cut out and goes with its garment bag
 * @param cautions how vestments are carried
 * @param doing which buttons there are
 * @param riding what can be said of what rides
 * @param history who was asked before, one sentence each, with the plan made after a refusal
 */
public record MovementView(
    Frame frame,
    String over,
    String title,
    List<Link> turn,
    String state,
    String problem,
    List<Fact> facts,
    List<Label> labels,
    List<String> cautions,
    Doing doing,
    Riding riding,
    List<Told> history) {

  public MovementView {
    turn = List.copyOf(turn);
    facts = List.copyOf(facts);
    labels = List.copyOf(labels);
    cautions = List.copyOf(cautions);
    history = List.copyOf(history);
  }

  public record Fact(String name, String value) {}

  /**
   * One press for all that rides.
   *
   * @param gone sends it out; empty if it cannot go
   * @param home says that it is home; empty if it is, or goes elsewhere
   */
  public record Riding(String gone, String home) {

    public static final Riding NONE = new Riding("", "");
  }

  /**
   * @param code of the set, or of a single piece
   * @param what for example "White chasuble and stole"
   * @param place where it lies, for example "Holy Trinity, vestment press, drawer 1"
   * @param note that its owner is to be asked; may be empty
   */
  public record Label(String code, String what, String place, String note) {}

  /**
   * @param address where presses are sent to
   * @param asking whether somebody can be asked now
   * @param answering whether yes and no can be said
   * @param accepted whether yes was said, so that only no, done and taking back are left
   * @param withdrawing whether the asking can be taken back
   * @param version that is sent with an answer
   * @param carrier name to be asked, as it was typed
   * @param mails whether a mail server is named, so that an address is of use
   * @param people known by name
   */
  public record Doing(
      String address,
      boolean asking,
      boolean answering,
      boolean accepted,
      boolean withdrawing,
      String version,
      Field carrier,
      Field by,
      Field mail,
      boolean mails,
      List<String> people) {
    public Doing {
      people = List.copyOf(people);
    }
  }

  public record Told(String sentence, Link more) {}
}
