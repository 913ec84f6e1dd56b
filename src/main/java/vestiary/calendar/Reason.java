package vestiary.calendar;

import java.util.Objects;

/**
 * One rule that had a part in a decision.
 *
 * @param sentence what it says of this date
 * @param source the norm, or "common practice"
 */
public record Reason(String sentence, String source) {

  public Reason {
    Objects.requireNonNull(sentence);
    Objects.requireNonNull(source);
  }
}
