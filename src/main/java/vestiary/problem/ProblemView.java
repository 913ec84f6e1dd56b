package vestiary.problem;

import java.util.List;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * Why a request was not carried out, and what to do next.
 *
 * @param frame {@link Frame#empty} when nothing can be known, as when the database is away
 * @param title for example "There is no such Mass"
 * @param sentence what happened
 * @param next what to do, one sentence each; may be empty
 * @param links where to go on
 * @param reference to tell the administrator; empty unless this is our fault
 */
public record ProblemView(
    Frame frame,
    String title,
    String sentence,
    List<String> next,
    List<Link> links,
    String reference) {

  public ProblemView {
    next = List.copyOf(next);
    links = List.copyOf(links);
  }
}
