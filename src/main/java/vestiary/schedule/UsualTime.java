package vestiary.schedule;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.UUID;
import vestiary.vesting.MassId;

/**
 * When a Mass that recurs would be said by its pattern.
 *
 * @param church id of the church that the pattern is for
 * @param usual by the pattern, in the cluster's zone
 * @param cancelled whether it is not said at all
 */
public record UsualTime(MassId mass, UUID church, ZonedDateTime usual, boolean cancelled) {

  /**
   * A recurring Mass that begins to recur.
   *
   * @param starts the first date that it counts from
   */
  public record Begins(UUID church, LocalDate starts) {}
}
