package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import vestiary.problem.Refused;

/** Shuts a user out of where they are in, without taking the user away. */
@ApplicationScoped
class EndUse {

  private final UserRows users;
  private final SessionRows sessions;
  private final TokenRows tokens;

  EndUse(UserRows users, SessionRows sessions, TokenRows tokens) {
    this.users = users;
    this.sessions = sessions;
    this.tokens = tokens;
  }

  /**
   * Ends every session, on every device.
   *
   * @throws Refused if there is no such user
   */
  @Transactional
  void sessions(String id) {
    sessions.endAll(users.get(id).id);
  }

  /**
   * Ends every token of their programs.
   *
   * @throws Refused if there is no such user
   */
  @Transactional
  void tokens(String id) {
    tokens.endAll(users.get(id).id);
  }
}
