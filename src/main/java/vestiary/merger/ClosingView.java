package vestiary.merger;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * The closing of a church.
 *
 * @param closed since when it is closed, or will be; empty while it is open
 * @param done what was just done; empty if nothing was
 * @param what ending its Mass times does, in whole sentences
 * @param goods how many pieces are at home there
 * @param to where they can go home to; empty if there is nothing to send or nowhere to go
 * @param noted what was decreed and done before, newest first
 */
public record ClosingView(
    Frame frame,
    String title,
    String action,
    String closed,
    String done,
    String problem,
    List<String> what,
    String goods,
    Choice to,
    Field from,
    Field note,
    List<String> noted,
    Link back) {

  public ClosingView {
    what = List.copyOf(what);
    noted = List.copyOf(noted);
  }
}
