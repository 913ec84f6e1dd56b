package vestiary.mail;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hibernate.Timeouts;
import org.hibernate.jpa.SpecHints;

@ApplicationScoped
class LetterRows implements PanacheRepositoryBase<LetterRow, UUID> {

  boolean isThere(String once) {
    return count("once", once) > 0;
  }

  Optional<LetterRow> findOnce(String once) {
    return find("once", once).firstResultOptional();
  }

  /** The next that is due and that no other copy of the server is at; for one to try. */
  Optional<LetterRow> findDueLocked(Instant now) {
    return find("state = 'waiting' and nextAt <= ?1 order by nextAt, id", now)
        .withLock(LockModeType.PESSIMISTIC_WRITE)
        .withHint(SpecHints.HINT_SPEC_LOCK_TIMEOUT, Timeouts.SKIP_LOCKED_MILLI)
        .firstResultOptional();
  }

  Optional<LetterRow> findByLink(String fingerprint) {
    return find("fingerprint = ?1 and fingerprint <> ''", fingerprint).firstResultOptional();
  }

  /** What is not sent, what fails first, then by the hour at which it was written. */
  List<LetterRow> unsent() {
    return list("state <> 'sent' order by state, madeAt, id");
  }

  List<LetterRow> sent(int most) {
    return find("state = 'sent' order by endedAt desc, id").page(0, most).list();
  }

  long countSentSince(Instant moment) {
    return count("state = 'sent' and endedAt >= ?1", moment);
  }

  void tidy(Instant sentBefore, Instant failedBefore) {
    delete("state = 'sent' and endedAt < ?1", sentBefore);
    delete("state in ('refused', 'given-up') and endedAt < ?1", failedBefore);
  }
}
