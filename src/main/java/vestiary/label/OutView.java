package vestiary.label;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;

/**
 * The form by which something goes out.
 *
 * @param problem what keeps it from going; may be empty
 * @param masses it is planned or held for, none chosen; empty if for nothing
 * @param without its pieces that may stay behind; none of a single piece
 * @param asking whom to ask first; empty if nobody
 * @param cautions how it travels unharmed
 */
public record OutView(
    Frame frame,
    String code,
    String title,
    String problem,
    Choice church,
    Field whom,
    Choice masses,
    Field due,
    Field carrier,
    Field signer,
    Field condition,
    Choice without,
    String asking,
    String askingError,
    boolean asked,
    List<String> people,
    List<String> cautions) {

  public OutView {
    people = List.copyOf(people);
    cautions = List.copyOf(cautions);
  }
}
