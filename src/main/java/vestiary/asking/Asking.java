package vestiary.asking;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/**
 * One person asked for one trip.
 *
 * @param id its own
 * @param trip as it was when he was asked
 * @param riding whether he is the one who drives that way anyway
 * @param person his id; none once he is erased
 * @param name as people call him; "somebody" once he is erased
 * @param askedBy name typed by whoever asked; may be empty
 * @param changedBy name of who changed the state last; may be empty
 * @param mailed when a mail was written to him; none if none was
 * @param mailFailed whether an older release tried a mail in vain
 * @param offered the plan that was made after his refusal, if any
 * @param version to notice a lost race
 */
public record Asking(
    UUID id,
    AskedTrip trip,
    boolean riding,
    List<UUID> person,
    String name,
    AskingState state,
    String askedBy,
    Instant askedAt,
    String changedBy,
    Instant changedAt,
    List<Instant> mailed,
    boolean mailFailed,
    List<UUID> offered,
    int version) {

  public Asking {
    person = List.copyOf(person);
    mailed = List.copyOf(mailed);
    offered = List.copyOf(offered);
  }
}
