package vestiary.inventory;

import java.util.List;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * What a piece is worth, for those who answer for the goods.
 *
 * @param said sentences, newest first
 */
record ValueView(
    Frame frame,
    String title,
    String done,
    Link back,
    String action,
    Field amount,
    Field currency,
    Field basis,
    List<String> said) {

  ValueView {
    said = List.copyOf(said);
  }
}
