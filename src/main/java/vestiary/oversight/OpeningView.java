package vestiary.oversight;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;

/**
 * Another cluster, to be opened or just opened.
 *
 * @param opened its name once it is; empty before
 * @param link by which its administrator chooses a password; empty before
 * @param signIn the whole address by which its people sign in; empty before
 */
record OpeningView(
    Frame frame,
    String problem,
    Field name,
    Field word,
    Choice calendar,
    Field timeZone,
    List<String> timeZones,
    Field administrator,
    String opened,
    String link,
    String signIn) {

  OpeningView {
    timeZones = List.copyOf(timeZones);
  }
}
