package vestiary.calendar;

import java.util.Objects;

/** Whether a Mass may be said, with the norm, in a sentence that says what to do instead. */
public record Permission(Verdict verdict, Sentence said, String source) {

  public Permission {
    Objects.requireNonNull(verdict);
    Objects.requireNonNull(said);
    Objects.requireNonNull(source);
  }

  /** What it says in English. */
  public String sentence() {
    return said.english();
  }
}
