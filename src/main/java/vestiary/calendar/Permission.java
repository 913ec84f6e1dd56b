package vestiary.calendar;

import java.util.Objects;

/** Whether a Mass may be said, with the norm, in a sentence that says what to do instead. */
public record Permission(Verdict verdict, String sentence, String source) {

  public Permission {
    Objects.requireNonNull(verdict);
    Objects.requireNonNull(sentence);
    Objects.requireNonNull(source);
  }
}
