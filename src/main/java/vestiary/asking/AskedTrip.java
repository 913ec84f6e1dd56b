package vestiary.asking;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import vestiary.vesting.ChurchId;

/**
 * What somebody is asked to carry.
 *
 * @param id of the trip, whichever plan has it
 * @param rider who drives that way anyway, as the plan calls him; empty if nobody does
 * @param pieces codes, one or more
 */
public record AskedTrip(
    UUID id, ChurchId from, ChurchId to, Instant leaveBy, String rider, List<String> pieces) {

  public AskedTrip {
    pieces = List.copyOf(pieces);
  }
}
