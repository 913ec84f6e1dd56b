package vestiary.sentonce;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.persistence.PersistenceException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import vestiary.access.CurrentCluster;

/** Remembers which forms were sent and how they were answered, each in a transaction of its own. */
@ApplicationScoped
public class SentForms {

  /** Longer than any browser keeps what it could not send. */
  static final Duration KEPT = Duration.ofDays(8);

  /** No form is worked on as long as that: the server was stopped meanwhile. */
  private static final Duration LONGEST = Duration.ofMinutes(2);

  private final SentFormRows rows;
  private final CurrentCluster current;
  private final Clock clock;

  SentForms(SentFormRows rows, CurrentCluster current, Clock clock) {
    this.rows = rows;
    this.current = current;
    this.clock = clock;
  }

  /** What is known of a form that is sent. */
  sealed interface Known {
    /** It was never sent: it is noted now and may be carried out. */
    record Fresh() implements Known {}

    /** It was carried out, and led there. */
    record Answered(String leadsTo) implements Known {}

    /** It is being carried out at this moment. */
    record Working() implements Known {}

    /** It was begun, and nobody knows what became of it. */
    record Unknown() implements Known {}
  }

  /** Notes that a form is carried out, unless it has been before. */
  Known begin(String key) {
    try {
      return QuarkusTransaction.requiringNew().call(() -> find(key).orElseGet(() -> note(key)));
    } catch (PersistenceException atTheSameMoment) {
      return new Known.Working();
    }
  }

  private Optional<Known> find(String key) {
    Instant tooOld = clock.instant().minus(LONGEST);
    return rows.findByKey(key)
        .map(
            row -> {
              if (row.answered) {
                return new Known.Answered(row.leadsTo);
              }
              return row.begunAt.isBefore(tooOld) ? new Known.Unknown() : new Known.Working();
            });
  }

  private Known note(String key) {
    SentFormRow row = new SentFormRow();
    row.key = key;
    row.begunAt = clock.instant();
    rows.persistAndFlush(row);
    return new Known.Fresh();
  }

  /**
   * Notes where its answer led.
   *
   * @param leadsTo empty if it changed nothing, so that it may be sent again
   */
  void end(String key, Optional<String> leadsTo) {
    QuarkusTransaction.requiringNew()
        .run(() -> leadsTo.ifPresentOrElse(way -> rows.answer(key, way), () -> rows.forget(key)));
  }

  /** Notes it when the request that carried it out is over. */
  @ActivateRequestContext
  void endAfterwards(UUID cluster, String key, Optional<String> leadsTo) {
    current.assign(cluster);
    end(key, leadsTo);
  }

  /** Forgets what no browser sends any more, in the present transaction. */
  public long tidy() {
    return rows.deleteBefore(clock.instant().minus(KEPT));
  }
}
