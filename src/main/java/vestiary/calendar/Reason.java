package vestiary.calendar;

import java.util.Objects;

/**
 * One rule that had a part in a decision.
 *
 * @param sentence what it says, with a full stop at its end
 * @param source the norm, or "common practice"
 */
public record Reason(String sentence, String source) {

  public Reason {
    Objects.requireNonNull(sentence);
    Objects.requireNonNull(source);
  }

  /** Sentence and source in one, for example "White, for Easter Time (GIRM 346 a).". */
  public String cited() {
    return sentence.substring(0, sentence.length() - 1) + " (" + source + ").";
  }
}
