package vestiary.care;

import java.util.List;
import vestiary.web.Frame;

/**
 * All that is in care now, by church.
 *
 * @param lead how it stands, in a sentence
 */
record CareListView(Frame frame, String lead, List<Store> stores) {

  CareListView {
    stores = List.copyOf(stores);
  }

  /**
   * @param id of the church
   */
  record Store(String id, String church, List<Away> away) {
    Store {
      away = List.copyOf(away);
    }
  }

  /**
   * A piece in care.
   *
   * @param late that it should have been back, in a sentence; empty if it is not late
   * @param care address of its care
   */
  record Away(String code, String piece, String what, String span, String late, String care) {}
}
