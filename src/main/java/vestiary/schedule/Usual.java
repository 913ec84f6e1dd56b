package vestiary.schedule;

import java.time.ZonedDateTime;
import vestiary.cluster.Church;

/**
 * When and where the pattern of a Mass has it; a Mass of no pattern is as usual wherever it is.
 *
 * @param ofPattern whether a pattern has it at all
 * @param start in the cluster's time zone
 */
public record Usual(boolean ofPattern, ZonedDateTime start, Church church) {

  boolean is(ZonedDateTime other, Church elsewhere) {
    return start.toInstant().equals(other.toInstant()) && church.id().equals(elsewhere.id());
  }
}
