package vestiary.allocation.plan;

import java.util.Objects;

/**
 * What a Mass would like its vestments to be.
 *
 * @param grade of the day, or empty
 * @param shade of the season, or empty
 */
public record Occasion(String grade, String shade) {

  /** Whatever there is. */
  public static final Occasion ANY = new Occasion("", "");

  public Occasion {
    Objects.requireNonNull(grade, "grade");
    Objects.requireNonNull(shade, "shade");
  }
}
