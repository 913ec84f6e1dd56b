package vestiary.allocation.celebrant;

import java.util.List;

/**
 * How good a division of Masses is, the weightiest first; less is better in all of them.
 *
 * @param unservedFirst Masses without a celebrant that cannot be left out: by which an obligation
 *     is fulfilled, or with a rite for certain persons
 * @param unserved other Masses without a celebrant
 * @param beyondOne what priests celebrate beyond one Mass a day and what the law itself allows: 1
 *     for a second, 2 more for a third, so that thirds come last
 * @param notAsAsked Masses not said by whoever was asked for or usually says them
 * @param otherTongue Masses whose celebrant does not celebrate in the language of their community
 * @param minutes driven by priests from Mass to Mass, and from home and back where it is known
 * @param worstShare early and far Masses of whoever has most of them
 * @param squares of all shares of early and far Masses, added up
 * @param changes Masses that somebody else says than is named now
 */
public record Levels(
    long unservedFirst,
    long unserved,
    long beyondOne,
    long notAsAsked,
    long otherTongue,
    long minutes,
    long worstShare,
    long squares,
    long changes) {

  /** How many levels are settled Mass by Mass and priest by priest; the rest compares priests. */
  static final int BY_DUTY = 6;

  static final int ALL = 9;

  static Levels of(long[] values) {
    return new Levels(
        values[0], values[1], values[2], values[3], values[4], values[5], values[6], values[7],
        values[8]);
  }

  /** The weightiest first. */
  public List<Long> asList() {
    return List.of(
        unservedFirst,
        unserved,
        beyondOne,
        notAsAsked,
        otherTongue,
        minutes,
        worstShare,
        squares,
        changes);
  }
}
