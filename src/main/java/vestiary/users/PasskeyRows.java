package vestiary.users;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class PasskeyRows implements PanacheRepositoryBase<PasskeyRow, UUID> {

  List<PasskeyRow> of(UUID user) {
    return list("userId = ?1 order by addedAt, id", user);
  }

  Optional<PasskeyRow> findByCredential(String credential) {
    return find("credential", credential).firstResultOptional();
  }
}
