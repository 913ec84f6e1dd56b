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
 * @param countAlbs whether albs, amices and cinctures are asked for in a church that keeps them by
 *     list
 * @param pontificals whether at a bishop's Mass his mitre, the dalmatic under his chasuble and two
 *     vimpas are asked for (Ceremonial of Bishops 56 to 60; vimpas: common practice, no source)
 */
public record VestingPolicies(
    Duration weekdaySetOut,
    Duration largeSetOut,
    Duration largeClearance,
    Duration turn,
    LadderOrder ladderOrder,
    boolean whiteForAll,
    boolean countAlbs,
    boolean pontificals) {

  /**
   * 20 minutes, 60, 30 and 5; stole over alb first; no white for all; albs where they are kept by
   * list; no pontificals.
   */
  public static final VestingPolicies DEFAULTS =
      new VestingPolicies(
          Duration.ofMinutes(20),
          Duration.ofMinutes(60),
          Duration.ofMinutes(30),
          Duration.ofMinutes(5),
          LadderOrder.STOLE,
          false,
          true,
          false);

  public VestingPolicies {
    Sacristy.requireMinutes(weekdaySetOut, "Set-out on weekdays");
    Sacristy.requireMinutes(largeSetOut, "Set-out of large liturgies");
    Sacristy.requireMinutes(largeClearance, "Clearance of large liturgies");
    Sacristy.requireMinutes(turn, "The turn between Masses");
  }

  /** With albs where they are kept by list, and without pontificals. */
  public VestingPolicies(
      Duration weekdaySetOut,
      Duration largeSetOut,
      Duration largeClearance,
      Duration turn,
      LadderOrder ladderOrder,
      boolean whiteForAll) {
    this(weekdaySetOut, largeSetOut, largeClearance, turn, ladderOrder, whiteForAll, true, false);
  }

  /** The same, albs being asked for. */
  VestingPolicies countingAlbs() {
    return new VestingPolicies(
        weekdaySetOut,
        largeSetOut,
        largeClearance,
        turn,
        ladderOrder,
        whiteForAll,
        true,
        pontificals);
  }
}
