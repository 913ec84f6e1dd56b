package vestiary.users;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class OutsideRows implements PanacheRepositoryBase<OutsideRow, UUID> {

  Optional<OutsideRow> findBySubject(String issuer, String subject) {
    return find("issuer = ?1 and subject = ?2", issuer, subject).firstResultOptional();
  }
}
