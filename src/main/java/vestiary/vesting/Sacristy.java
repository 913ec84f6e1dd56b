package vestiary.vesting;

import java.time.Duration;

/**
 * A church's own usual times around a Mass. Published sacristans' guides have 20 to 40 minutes
 * before and about 15 to 30 after.
 *
 * @param setOut from when before the start the vestments lie ready, whole minutes, 0 or more
 * @param clearance until when after the end they are hung up, whole minutes, 0 or more
 */
public record Sacristy(Duration setOut, Duration clearance) {

  public Sacristy {
    requireMinutes(setOut, "Set-out");
    requireMinutes(clearance, "Clearance");
  }

  static void requireMinutes(Duration time, String what) {
    if (time.isNegative() || !time.equals(Duration.ofMinutes(time.toMinutes()))) {
      throw new IllegalArgumentException(what + " is whole minutes, 0 or more, not " + time);
    }
  }
}
