package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.access.Role;

/** Where users are written to who have proven an address. */
@ApplicationScoped
public class UserAddresses {

  private final KeepUserMail mails;
  private final UserRows users;
  private final UserChurchRows churches;

  UserAddresses(KeepUserMail mails, UserRows users, UserChurchRows churches) {
    this.mails = mails;
    this.users = users;
    this.churches = churches;
  }

  /** That of a user; empty if there is none, or it is no user. */
  @Transactional
  public Optional<String> find(UUID user) {
    return mails.findProven(user);
  }

  /** Those of the sacristans of a church. */
  @Transactional
  public List<String> ofSacristans(UUID church) {
    return users.list("role", Role.SACRISTAN.id()).stream()
        .filter(user -> churches.churchesOf(user.id).contains(church))
        .flatMap(user -> mails.findProven(user.id).stream())
        .toList();
  }
}
