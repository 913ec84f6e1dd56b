package vestiary.mail;

import vestiary.calendar.Term;

/** What has become of a letter. */
public enum LetterState implements Term {
  /** It is to be sent, for the first time or once more. */
  WAITING,
  SENT,
  /** The mail server does not take it for this address. */
  REFUSED,
  /** It was tried for days. */
  GIVEN_UP
}
