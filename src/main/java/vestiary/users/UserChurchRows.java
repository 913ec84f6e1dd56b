package vestiary.users;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

@ApplicationScoped
class UserChurchRows implements PanacheRepositoryBase<UserChurchRow, UUID> {

  Set<UUID> churchesOf(UUID user) {
    return list("userId", user).stream().map(r -> r.churchId).collect(Collectors.toSet());
  }

  void forget(UUID user) {
    delete("userId", user);
  }
}
