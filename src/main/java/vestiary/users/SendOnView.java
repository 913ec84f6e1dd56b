package vestiary.users;

import java.util.List;
import vestiary.web.Frame;

/**
 * Offers to send what was typed before signing in.
 *
 * @param action where it is sent
 * @param fields as they were typed
 */
record SendOnView(Frame frame, String action, List<SignInView.Typed> fields) {

  SendOnView {
    fields = List.copyOf(fields);
  }
}
