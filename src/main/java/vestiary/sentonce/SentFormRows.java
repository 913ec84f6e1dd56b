package vestiary.sentonce;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class SentFormRows implements PanacheRepositoryBase<SentFormRow, UUID> {

  Optional<SentFormRow> findByKey(String key) {
    return find("key", key).firstResultOptional();
  }

  void answer(String key, String leadsTo) {
    update("answered = true, leadsTo = ?1 where key = ?2", leadsTo, key);
  }

  void forget(String key) {
    delete("key", key);
  }

  long deleteBefore(Instant moment) {
    return delete("begunAt < ?1", moment);
  }
}
