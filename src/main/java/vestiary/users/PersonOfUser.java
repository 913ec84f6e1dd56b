package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Optional;
import java.util.UUID;

/** Who a user is in the schedule. */
@ApplicationScoped
public class PersonOfUser {

  private final UserRows users;

  PersonOfUser(UserRows users) {
    this.users = users;
  }

  /** The person's id; empty if nobody was named. */
  @Transactional
  public Optional<UUID> find(UUID user) {
    return users.findByIdOptional(user).flatMap(row -> Optional.ofNullable(row.personId));
  }
}
