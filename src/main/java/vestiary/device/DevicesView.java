package vestiary.device;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * The shared devices of one’s churches, and the form by which this one becomes one.
 *
 * @param churches where one may be let stay
 * @param hands to who acts on them, church by church
 */
record DevicesView(
    Frame frame,
    String done,
    String problem,
    List<Row> devices,
    Field name,
    Choice churches,
    List<Link> hands) {

  DevicesView {
    devices = List.copyOf(devices);
    hands = List.copyOf(hands);
  }

  /**
   * @param about church, since when, last used
   * @param end where the press is sent that shuts it out
   * @param goOn where the press is sent that lets it go on; empty unless it has stopped
   */
  record Row(String name, String about, String end, String goOn) {}
}
