package vestiary.mail;

import vestiary.calendar.Term;

/** Why somebody is written to. */
public enum LetterKind implements Term {
  /** What concerns somebody in the week to come. */
  WEEK("the week to come"),
  /** Something of theirs has changed. */
  CHANGE("a change"),
  /** Something has changed at a church that they care for. */
  SACRISTY("a change in the sacristy"),
  /** Vestments are asked for, granted, refused or free. */
  WISH("vestments asked for"),
  /** What should be back. */
  OVERDUE("what is overdue"),
  /** Somebody is asked to carry vestments. */
  CARRYING("a journey"),
  /** Somebody asked for a new password; its link is made while it leaves. */
  PASSWORD("a new password");

  private final String words;

  LetterKind(String words) {
    this.words = words;
  }

  /** As the list of letters calls it. */
  public String words() {
    return words;
  }
}
