package vestiary.people;

import java.time.Instant;
import java.util.UUID;
import vestiary.calendar.Term;

/**
 * When somebody comes to a Mass from outside.
 *
 * @param mass id of the Mass
 * @param person id of whoever comes
 * @param brings what he said of his vestments; what is planned follows from the Mass
 */
public record Arrival(UUID mass, UUID person, Instant arrives, Brings brings) {

  /** Whether he brings vestments of his own. */
  public enum Brings implements Term {
    NOT_SAID,
    OWN,
    NOTHING
  }
}
