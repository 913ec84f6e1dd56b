package vestiary.calendar;

import java.util.Objects;

/**
 * One rule that had a part in a decision.
 *
 * @param said what it says, with a full stop at its end
 * @param source the norm, or "common practice"
 */
public record Reason(Sentence said, String source) {

  public Reason {
    Objects.requireNonNull(said);
    Objects.requireNonNull(source);
  }

  /** What it says in English. */
  public String sentence() {
    return said.english();
  }

  /** Sentence and source in one, for example "White, for Easter Time (GIRM 346 a).". */
  public String cited() {
    String sentence = sentence();
    return sentence.substring(0, sentence.length() - 1) + " (" + source + ").";
  }
}
