package vestiary.users;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

@ApplicationScoped
class FailedSignInRows implements PanacheRepositoryBase<FailedSignInRow, UUID> {

  /** The moments of the tries since then, the earliest first. */
  List<Instant> of(String login, String address, Instant since) {
    return moments("login = ?1 and address = ?2 and at > ?3 order by at", login, address, since);
  }

  List<Instant> ofLogin(String login, Instant since) {
    return moments("login = ?1 and at > ?2 order by at", login, since);
  }

  List<Instant> ofAddress(String address, Instant since) {
    return moments("address = ?1 and at > ?2 order by at", address, since);
  }

  void forget(String login, String address) {
    delete("login = ?1 and address = ?2", login, address);
  }

  private List<Instant> moments(String query, Object... values) {
    return list(query, values).stream().map(row -> row.at).toList();
  }
}
