package vestiary.cluster;

import java.time.Duration;
import vestiary.vesting.LadderOrder;
import vestiary.vesting.VestingPolicies;

/**
 * What a cluster decides for itself, where norms leave it open or practice differs.
 *
 * @param ladderOrder which substitute of a concelebrant's chasuble comes first
 * @param whiteForAll whether all wear white at a big liturgy outside white days: a custom
 * @param turnMinutes from the end of a Mass until the next in the same church may begin with the
 *     same set
 * @param weekdaySetOut minutes before a weekday Mass by which vestments are laid out
 * @param largeSetOut the same with a bishop or six concelebrants
 * @param largeClearance minutes after such a Mass until everything is put away
 * @param countBy whether a priest's Masses are counted by the calendar day or the liturgical day
 * @param permittedWeekday Masses a priest may celebrate on a weekday by the permission on file
 *     (Code of Canon Law, canon 905)
 * @param permittedSunday the same on Sundays and holy days
 * @param countAlbs whether albs, amices and cinctures are counted in a church that keeps them by
 *     list
 * @param pontificals whether the pool is asked for what a bishop wears besides: mitre, dalmatic
 *     under the chasuble, two vimpas
 */
public record Policies(
    LadderOrder ladderOrder,
    boolean whiteForAll,
    int turnMinutes,
    int weekdaySetOut,
    int largeSetOut,
    int largeClearance,
    CountBy countBy,
    int permittedWeekday,
    int permittedSunday,
    boolean countAlbs,
    boolean pontificals) {

  /** What a new cluster begins with. */
  public static final Policies DEFAULTS =
      new Policies(LadderOrder.STOLE, false, 5, 20, 60, 30, CountBy.CALENDAR, 1, 1, true, false);

  /** The part that decides what is to be laid out and for how long. */
  public VestingPolicies vesting() {
    return new VestingPolicies(
        Duration.ofMinutes(weekdaySetOut),
        Duration.ofMinutes(largeSetOut),
        Duration.ofMinutes(largeClearance),
        Duration.ofMinutes(turnMinutes),
        ladderOrder,
        whiteForAll,
        countAlbs,
        pontificals);
  }
}
