package vestiary.device;

import java.util.List;
import vestiary.web.Field;
import vestiary.web.Frame;

/**
 * Who acts on the shared devices of a church.
 *
 * @param people known ones, for completion
 */
record HandsView(
    Frame frame,
    String church,
    String problem,
    String action,
    List<Row> hands,
    Field name,
    Field code,
    List<String> people) {

  HandsView {
    hands = List.copyOf(hands);
    people = List.copyOf(people);
  }

  /**
   * @param about whether the name is enough
   * @param end where the press is sent that takes them off the list
   */
  record Row(String name, String about, String end) {}
}
