package vestiary.proper;

import java.util.List;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * The question whether a day of one's own is to be removed.
 *
 * @param question for example "Remove Our Lady of the Ford?"
 * @param problem why it cannot be; empty before it was tried
 * @param sentences what follows from it
 * @param action where a yes is sent
 * @param back the way without it
 * @param version of what was read, to notice a lost race
 */
public record RemovalView(
    Frame frame,
    String question,
    String problem,
    List<String> sentences,
    String action,
    Link back,
    String version) {

  public RemovalView {
    sentences = List.copyOf(sentences);
  }
}
