package vestiary.label;

import java.util.List;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Ribbon;

/**
 * What a label's scan opens, in words for a phone.
 *
 * @param code of the set or piece
 * @param title for example "Chasuble and stole"
 * @param name of the set; may be empty
 * @param about for example "matches HT-W2 and HT-W3, 132 cm"; may be empty
 * @param belongs where it should be, for example "Belongs at Holy Trinity: press 2."; empty if it
 *     is there
 * @param now where it is; empty where its pieces are apart
 * @param apart where each of its pieces is, if they are apart
 * @param next for what it is wanted next
 * @param done what was just said of it; empty else
 * @param problem what kept the last press from being carried out; empty else
 * @param doing what can be pressed
 * @param before who had it before, the latest first
 * @param turn what else can be looked at, its pieces among it
 */
public record ScanView(
    Frame frame,
    String code,
    String title,
    String name,
    Ribbon ribbon,
    String about,
    String belongs,
    String now,
    List<String> apart,
    Next next,
    String done,
    String problem,
    Doing doing,
    List<String> before,
    List<Link> turn) {

  public ScanView {
    apart = List.copyOf(apart);
    before = List.copyOf(before);
    turn = List.copyOf(turn);
  }

  /**
   * For what it is wanted next.
   *
   * @param who for example "For Father Cosmas Ilverton"; empty where it is wanted for nothing
   * @param what for example "Mass at Saint Anne on Tuesday 8 December, 18:30"
   */
  public record Next(String who, String what) {

    public static final Next NONE = new Next("", "");
  }

  /**
   * What can be pressed; what cannot is not shown.
   *
   * @param address that the presses are sent to, for example "/s/HT-W2"
   * @param out the chief press that sends it out; {@link Press#NONE} if it cannot go so
   * @param back the chief press that takes it in; likewise
   * @param home the press that says it lies at home again; likewise
   * @param otherwise the way to the form for everything else
   * @param undo the press that takes back what was just said; likewise
   */
  public record Doing(
      String address, Press out, Press back, Press home, Link otherwise, Press undo) {}

  /**
   * One press with what it sends.
   *
   * @param words on the button; empty if there is none
   * @param field hidden name
   * @param value hidden value
   */
  public record Press(String words, String field, String value) {

    public static final Press NONE = new Press("", "", "");
  }
}
