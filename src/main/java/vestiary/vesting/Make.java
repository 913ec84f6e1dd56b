package vestiary.vesting;

import java.util.Objects;

/**
 * What a piece is like beyond kind and colour, or what would suit a need best. No norm asks for it,
 * so it never decides who is short; a planner may prefer the better suited of two.
 *
 * @param shade of violet as the list has it, such as advent (bluish) or lent (reddish); empty if
 *     unknown or all the same. Common practice, no source: the books know one violet
 * @param grade written form of a {@link Grade}; empty if unknown or all the same
 * @param size length or label; empty if unknown or all the same
 */
public record Make(String shade, String grade, String size) {

  /** Nothing is known, or all is the same. */
  public static final Make ANY = new Make("", "", "");

  public Make {
    Objects.requireNonNull(shade, "shade");
    Objects.requireNonNull(grade, "grade");
    Objects.requireNonNull(size, "size");
  }
}
