package vestiary.allocation.plan;

/**
 * Which lengths of a chasuble, dalmatic or cope suit a wearer, in centimetres of the back. A piece
 * of unknown length is taken to suit.
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

  /** Whether a piece of that length suits. */
  public boolean suits(int length) {
    return length == 0 || (shortest <= length && length <= longest);
  }
}
