package vestiary.mail;

import vestiary.calendar.Term;
import vestiary.web.Speech;

/** Why somebody is written to. */
public enum LetterKind implements Term {
  /** What concerns somebody in the week to come. */
  WEEK(Speech.word("the week to come")),
  /** Something of theirs has changed. */
  CHANGE(Speech.word("a change")),
  /** Something has changed at a church that they care for. */
  SACRISTY(Speech.word("a change in the sacristy")),
  /** Vestments are asked for, granted, refused or free. */
  WISH(Speech.word("vestments asked for")),
  /** What should be back. */
  OVERDUE(Speech.word("what is overdue")),
  /** Somebody is asked to carry vestments. */
  CARRYING(Speech.word("a journey")),
  /** Somebody asked for a new password; its link is made while it leaves. */
  PASSWORD(Speech.word("a new password"));

  private final String words;

  LetterKind(String words) {
    this.words = words;
  }

  /** As the list of letters calls it. */
  public String words() {
    return Speech.say(words);
  }
}
