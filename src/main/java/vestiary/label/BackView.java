package vestiary.label;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;

/**
 * The form by which something is taken in.
 *
 * @param problem what keeps it from that; may be empty
 * @param without its pieces that may still be out; none of a single piece
 */
public record BackView(
    Frame frame,
    String code,
    String title,
    String problem,
    Choice church,
    Field taker,
    Field condition,
    Choice without,
    List<String> people) {

  public BackView {
    people = List.copyOf(people);
  }
}
