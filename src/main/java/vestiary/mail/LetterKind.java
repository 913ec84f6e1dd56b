package vestiary.mail;

import vestiary.calendar.Term;

/** Why somebody is written to. */
public enum LetterKind implements Term {
  /** What concerns somebody in the week to come. */
  WEEK("the week to come"),
  /** Something of theirs has changed. */
  CHANGE("a change"),
  /** Vestments are asked for, granted, refused or free. */
  WISH("vestments asked for"),
  /** What should be back. */
  OVERDUE("what is overdue"),
  /** Somebody is asked to carry vestments. */
  CARRYING("a journey");

  private final String words;

  LetterKind(String words) {
    this.words = words;
  }

  /** As the list of letters calls it. */
  public String words() {
    return words;
  }
}
