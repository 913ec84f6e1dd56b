package vestiary.allocation.plan;

import java.util.Objects;

/**
 * What people prefer by, and what no norm asks.
 *
 * @param suit name of the suit its set was made for, or empty
 * @param grade for which days it is meant, or empty
 * @param shade its tone of the colour, or empty
 * @param length of the back in centimetres, 0 if unknown
 * @param onAsking whether its owner must be asked before it is used elsewhere than at home
 * @param worn how often it has been worn of late, 0 or more
 */
public record Traits(
    String suit, String grade, String shade, int length, boolean onAsking, int worn) {

  /** Nothing in particular. */
  public static final Traits PLAIN = new Traits("", "", "", 0, false, 0);

  public Traits {
    Objects.requireNonNull(suit, "suit");
    Objects.requireNonNull(grade, "grade");
    Objects.requireNonNull(shade, "shade");
    if (length < 0 || worn < 0) {
      throw new IllegalArgumentException(
          "Length and wear are 0 or more, not " + length + " and " + worn);
    }
  }
}
