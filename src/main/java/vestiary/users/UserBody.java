package vestiary.users;

import java.util.List;

/**
 * A user as the API writes one.
 *
 * @param churches short names, of a sacristan alone
 * @param person short name of whom they are in the schedule; absent for nobody
 * @param hasPassword whether one was chosen
 * @param sessions how many are open
 * @param link to choose a password by, when one was just made; absent otherwise
 */
record UserBody(
    String id,
    String login,
    String name,
    String role,
    List<String> churches,
    String person,
    boolean hasPassword,
    int sessions,
    String link) {

  UserBody {
    churches = List.copyOf(churches);
  }

  UserBody with(String made) {
    return new UserBody(id, login, name, role, churches, person, hasPassword, sessions, made);
  }

  /** What is sent to let somebody in or to change them. */
  record Entry(String login, String name, String role, List<String> churches, String person) {
    SaveUser.Request toRequest() {
      return new SaveUser.Request(login, name, role, churches, person);
    }
  }

  /** A link alone. */
  record Link(String link) {}
}
