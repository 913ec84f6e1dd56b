package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.UUID;
import vestiary.access.Role;

/** How the sacristans of a church are written to. */
@ApplicationScoped
@Transactional
public class SacristansByMail {

  private final UserRows users;
  private final UserChurchRows churches;
  private final KeepUserMail mails;

  SacristansByMail(UserRows users, UserChurchRows churches, KeepUserMail mails) {
    this.users = users;
    this.churches = churches;
    this.mails = mails;
  }

  /** Addresses that were proven, each once; empty if nobody there has one. */
  public List<String> of(UUID church) {
    return users.inOrder().stream()
        .filter(user -> user.toRole() == Role.SACRISTAN)
        .filter(user -> churches.churchesOf(user.id).contains(church))
        .flatMap(user -> mails.findProven(user.id).stream())
        .distinct()
        .toList();
  }
}
