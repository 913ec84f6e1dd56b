package vestiary.regrouping;

import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Why clusters are not regrouped, in one plain sentence with what to do; nothing was changed. */
final class CannotRegroup {

  private CannotRegroup() {}

  static Refused because(String sentence, Object... said) {
    return new Refused(
        new Refusal.AgainstRule("regrouping", sentence.formatted(said) + " Nothing was changed."));
  }
}
