package vestiary.sending;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.UUID;

@ApplicationScoped
class OverdueMailRows implements PanacheRepositoryBase<OverdueMailRow, UUID> {

  boolean isSent(UUID sending, LocalDate day) {
    return count("sendingId = ?1 and day = ?2", sending, day) > 0;
  }
}
