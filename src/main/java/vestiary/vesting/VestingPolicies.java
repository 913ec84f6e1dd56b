package vestiary.vesting;

import java.time.Duration;

/**
 * What a cluster decides about vesting, in whole minutes.
 *
 * @param weekdaySetOut before a Mass on a weekday; published sacristans' guides: 20 to 40 minutes
 * @param largeSetOut at least this before a large liturgy; common practice, no source
 * @param largeClearance at least this after a large liturgy; common practice, no source
 * @param turn between two Masses in one church while the vestments stay out; common practice, no
 *     source
 * @param ladderOrder which substitute concelebrants take first
 * @param whiteForAll whether all concelebrants of a large Mass wear white whatever its colour;
 *     common practice, no source, while the principal celebrant keeps the colour (RS 124)
 */
public record VestingPolicies(
    Duration weekdaySetOut,
    Duration largeSetOut,
    Duration largeClearance,
    Duration turn,
    LadderOrder ladderOrder,
    boolean whiteForAll) {

  /** 20 minutes, 60, 30 and 5; stole over alb first; no white for all. */
  public static final VestingPolicies DEFAULTS =
      new VestingPolicies(
          Duration.ofMinutes(20),
          Duration.ofMinutes(60),
          Duration.ofMinutes(30),
          Duration.ofMinutes(5),
          LadderOrder.STOLE,
          false);

  public VestingPolicies {
    Sacristy.requireMinutes(weekdaySetOut, "Set-out on weekdays");
    Sacristy.requireMinutes(largeSetOut, "Set-out of large liturgies");
    Sacristy.requireMinutes(largeClearance, "Clearance of large liturgies");
    Sacristy.requireMinutes(turn, "The turn between Masses");
  }
}
