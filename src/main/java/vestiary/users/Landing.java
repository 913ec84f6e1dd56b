package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.UUID;
import vestiary.access.Role;

/** Where somebody stands after coming in. */
@ApplicationScoped
class Landing {

  private static final String OWN = "/mine";

  private final UserRows users;

  Landing(UserRows users) {
    this.users = users;
  }

  /**
   * Where they wanted to go; a minister who wanted nothing in particular stands before his own
   * Masses and journeys.
   *
   * @param asked an address that the browser sent; any but one of ours leads to the week
   */
  @Transactional
  String of(String asked, UUID user) {
    String back = Back.of(asked);
    return back.equals(Back.WEEK) && hasOwn(users.findById(user)) ? OWN : back;
  }

  private static boolean hasOwn(UserRow user) {
    return user.toRole() == Role.MINISTER && user.personId != null;
  }
}
