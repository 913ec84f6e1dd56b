package vestiary.vesting;

import java.time.Duration;
import java.time.Instant;

/**
 * How long a Mass keeps its vestments: from set-out to clearance, with the Mass itself inside.
 *
 * @param setOut when they lie ready, included
 * @param start first moment of the Mass, at or after set-out
 * @param end end of the Mass, after its start
 * @param cleared when they hang in the cupboard again, excluded, at or after the end
 */
public record Window(Instant setOut, Instant start, Instant end, Instant cleared) {

  public Window {
    if (setOut.isAfter(start) || !start.isBefore(end) || end.isAfter(cleared)) {
      throw new IllegalArgumentException(
          "Set-out, start, end and clearance follow one another, not "
              + String.join(", ", setOut + "", start + "", end + "", cleared + ""));
    }
  }

  /**
   * The window of a Mass. Set-out is the one chosen for the Mass; else the church's own on Sundays
   * and holy days and the cluster's on weekdays, and not less than the large one where a bishop
   * presides or six or more concelebrate. Clearance is the church's own, with the same rule for
   * large liturgies. So a bishop's Mass on a Saturday at 10:30 of 105 minutes keeps its vestments
   * from 9:30 to 12:45.
   *
   * <p>Source: common practice; published sacristans' guides for the usual minutes.
   */
  public static Window of(VestedMass mass, VestingPolicies policies) {
    MassTime time = mass.time();
    boolean large = mass.ministers().areMany();
    Duration usual = time.holyDay() ? time.sacristy().setOut() : policies.weekdaySetOut();
    Duration before = large ? longer(usual, policies.largeSetOut()) : usual;
    Duration chosen = time.chosenSetOut().isZero() ? before : time.chosenSetOut();
    Duration own = time.sacristy().clearance();
    Duration after = large ? longer(own, policies.largeClearance()) : own;
    return new Window(time.start().minus(chosen), time.start(), time.end(), time.end().plus(after));
  }

  /** Whether there is a moment that belongs to both. */
  public boolean overlaps(Window other) {
    return setOut.isBefore(other.cleared) && other.setOut.isBefore(cleared);
  }

  private static Duration longer(Duration one, Duration other) {
    return one.compareTo(other) < 0 ? other : one;
  }
}
