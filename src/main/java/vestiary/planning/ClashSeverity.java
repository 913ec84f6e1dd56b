package vestiary.planning;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.sayOf;
import static vestiary.web.Speech.word;

import vestiary.calendar.Term;
import vestiary.web.ClashMark;
import vestiary.web.Speech;

/** How grave a clash is, the gravest first. */
public enum ClashSeverity implements Term {
  /** It cannot stay so. */
  MUST(word("Must be mended"), word("must be mended")),
  /** Lawful ways out are there, and somebody has to choose one. */
  DECIDE(word("To decide"), word("to be decided")),
  /** Nothing need be done. */
  KNOW(word("Worth knowing"), word("worth knowing"));

  private final String word;
  private final String verdict;

  ClashSeverity(String word, String verdict) {
    this.word = word;
    this.verdict = verdict;
  }

  /** Its lozenge, with the word beside it. */
  public ClashMark mark() {
    return new ClashMark(id(), say(word));
  }

  /** As in "two things are to be decided". */
  String counted(int count) {
    String things = Speech.count(count, "thing");
    if (this == MUST) {
      return sayOf(count, "%s must be mended", things);
    }
    return count == 1
        ? say("%s is %s", things, say(verdict))
        : say("%s are %s", things, say(verdict));
  }
}
