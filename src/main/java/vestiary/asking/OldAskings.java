package vestiary.asking;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** Forgets who was asked for journeys that are long made. */
@ApplicationScoped
public class OldAskings {

  private static final String OLD = "leaveBy < ?1";

  private final AskingRows askings;

  OldAskings(AskingRows askings) {
    this.askings = askings;
  }

  /** How many are for journeys that left before that moment. */
  public long count(Instant before) {
    return askings.count(OLD, before);
  }

  @Transactional
  public void forget(Instant before) {
    askings.delete(OLD, before);
  }

  /** Who was asked for a journey that leaves from that moment on. */
  public Set<UUID> peopleSince(Instant moment) {
    return askings.list("leaveBy >= ?1", moment).stream()
        .map(row -> row.personId)
        .filter(Objects::nonNull)
        .collect(Collectors.toSet());
  }
}
