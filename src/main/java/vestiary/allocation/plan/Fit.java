package vestiary.allocation.plan;

import vestiary.vesting.AlbLength;

/**
 * Which lengths of a chasuble, dalmatic, cope or alb suit a wearer, in centimetres of the back. A
 * piece of unknown length is taken to suit.
 *
 * @param shortest 0 or more
 * @param longest at least the shortest
 * @param must whether nothing else can be worn; else it is only liked better
 */
public record Fit(int shortest, int longest, boolean must) {

  /** Whatever there is. */
  public static final Fit ANY = new Fit(0, Integer.MAX_VALUE, false);

  public Fit {
    if (shortest < 0 || longest < shortest) {
      throw new IllegalArgumentException(
          "Lengths that suit run from 0 or more upwards, not from " + shortest + " to " + longest);
    }
  }

  /** The albs that suit somebody whose height is known; others are only liked less. */
  public static Fit of(AlbLength wearer) {
    return new Fit(wearer.shortest(), wearer.longest(), false);
  }

  /** The albs that suit where one of that size is asked for; all, if it is no length. */
  public static Fit around(String size) {
    int length = AlbLength.centimetres(size);
    return length == 0
        ? ANY
        : new Fit(Math.max(0, length - AlbLength.SHORTER), length + AlbLength.LONGER, false);
  }

  /** Whether a piece of that length suits. */
  public boolean suits(int length) {
    return length == 0 || (shortest <= length && length <= longest);
  }
}
