package vestiary.users;

import java.util.List;
import vestiary.web.Frame;
import vestiary.web.Link;

/** Everybody who may come in. */
record UsersView(Frame frame, List<Row> users, Link add) {

  UsersView {
    users = List.copyOf(users);
  }

  /**
   * @param about role, and whether a password was chosen yet
   */
  record Row(Link user, String login, String about) {}
}
