package vestiary.users;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

@ApplicationScoped
class FailedSignInRows implements PanacheRepositoryBase<FailedSignInRow, UUID> {

  /**
   * The moments of the tries since then, the earliest first: of this person by this known device
   * wherever it is, else of this person at this address by no known device.
   */
  List<Instant> alike(Tries.Try one, Instant since) {
    return one.device().isEmpty()
        ? moments(
            "kind = ?1 and device = '' and login = ?2 and address = ?3 and at > ?4 order by at",
            one.kind().id(),
            one.login(),
            one.address(),
            since)
        : moments(
            "kind = ?1 and login = ?2 and device = ?3 and at > ?4 order by at",
            one.kind().id(),
            one.login(),
            one.device(),
            since);
  }

  /** Of this person, from everywhere, by no known device. */
  List<Instant> ofLogin(Tries.Try one, Instant since) {
    return moments(
        "kind = ?1 and device = '' and login = ?2 and at > ?3 order by at",
        one.kind().id(),
        one.login(),
        since);
  }

  /** Of everybody, from this address, by no known device. */
  List<Instant> ofAddress(Tries.Try one, Instant since) {
    return moments(
        "kind = ?1 and device = '' and address = ?2 and at > ?3 order by at",
        one.kind().id(),
        one.address(),
        since);
  }

  /** Those that would keep the same person from trying again in the same way. */
  void forget(Tries.Try one) {
    delete(
        "kind = ?1 and login = ?2 and device = ?3 and (device <> '' or address = ?4)",
        one.kind().id(),
        one.login(),
        one.device(),
        one.address());
  }

  private List<Instant> moments(String query, Object... values) {
    return list(query, values).stream().map(row -> row.at).toList();
  }
}
