package vestiary.asking;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** Takes back what somebody who is removed for good was asked to carry, and has not carried. */
@ApplicationScoped
public class WithdrawAskings {

  private final AskingRows askings;
  private final Clock clock;

  WithdrawAskings(AskingRows askings, Clock clock) {
    this.askings = askings;
    this.clock = clock;
  }

  /** How many are open. */
  public int count(UUID person) {
    return open(person).size();
  }

  /** Takes them back; the journeys are to be asked for anew. */
  @Transactional
  public void of(UUID person) {
    Instant now = clock.instant();
    for (AskingRow row : open(person)) {
      row.state = AskingState.WITHDRAWN.id();
      row.changedBy = "";
      row.changedAt = now;
    }
    askings.flush();
  }

  private List<AskingRow> open(UUID person) {
    return askings.list("personId = ?1 and state in ('asked', 'accepted')", person);
  }
}
