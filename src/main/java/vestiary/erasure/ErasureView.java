package vestiary.erasure;

import java.util.List;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * The question whether to remove somebody for good.
 *
 * @param problem what kept it from being done; empty at first
 * @param goes sentences
 * @param stays sentences
 * @param action where the answer is sent
 */
record ErasureView(
    Frame frame,
    String name,
    String problem,
    List<String> goes,
    List<String> stays,
    String action,
    Link back) {

  ErasureView {
    goes = List.copyOf(goes);
    stays = List.copyOf(stays);
  }
}
