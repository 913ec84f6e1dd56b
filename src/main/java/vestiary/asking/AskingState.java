package vestiary.asking;

import vestiary.calendar.Term;

/** How far the asking of a person is. */
public enum AskingState implements Term {
  /** No answer yet. */
  ASKED,
  ACCEPTED,
  /** He is no carrier for this trip, and is not asked again for it. */
  DECLINED,
  /** The pieces are there. */
  DONE,
  /** Taken back, so that somebody else can be asked. */
  WITHDRAWN;

  /** Whether the trip is this person's, or may become his. */
  public boolean isOpen() {
    return this == ASKED || this == ACCEPTED || this == DONE;
  }

  /** Whether this may follow that. Who has said yes may still find that he cannot. */
  boolean mayFollow(AskingState before) {
    return switch (this) {
      case ASKED -> false;
      case ACCEPTED -> before == ASKED;
      case DECLINED, WITHDRAWN -> before == ASKED || before == ACCEPTED;
      case DONE -> before == ASKED || before == ACCEPTED;
    };
  }
}
