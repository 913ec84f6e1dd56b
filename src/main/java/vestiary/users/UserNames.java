package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/** What users are called, for whoever knows them by id. */
@ApplicationScoped
public class UserNames {

  private final UserRows users;

  UserNames(UserRows users) {
    this.users = users;
  }

  /** All who may come in, by id. */
  public Map<UUID, String> all() {
    return users.streamAll().collect(Collectors.toMap(u -> u.id, u -> u.name));
  }
}
