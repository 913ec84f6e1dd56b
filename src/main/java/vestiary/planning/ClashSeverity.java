package vestiary.planning;

import vestiary.calendar.Term;
import vestiary.web.ClashMark;
import vestiary.web.English;

/** How grave a clash is, the gravest first. */
public enum ClashSeverity implements Term {
  /** It cannot stay so. */
  MUST("Must be mended", "must be mended"),
  /** Lawful ways out are there, and somebody has to choose one. */
  DECIDE("To decide", "to be decided"),
  /** Nothing need be done. */
  KNOW("Worth knowing", "worth knowing");

  private final String word;
  private final String verdict;

  ClashSeverity(String word, String verdict) {
    this.word = word;
    this.verdict = verdict;
  }

  /** Its lozenge, with the word beside it. */
  public ClashMark mark() {
    return new ClashMark(id(), word);
  }

  /** As in "two things are to be decided". */
  String counted(int count) {
    String verb = this == MUST ? " " : count == 1 ? " is " : " are ";
    return English.count(count, "thing") + verb + verdict;
  }
}
