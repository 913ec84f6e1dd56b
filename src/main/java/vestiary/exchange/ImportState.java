package vestiary.exchange;

import vestiary.calendar.Term;

/** How far a list is that somebody sent. */
enum ImportState implements Term {
  /** Nobody has said yet what is to be done with it. */
  SENT,
  /** Its turn comes. */
  WAITING,
  RUNNING,
  /** Held against what the cluster has; nothing was changed. */
  TRIED,
  /** Meant to be brought in, and lines stood against it; nothing was changed. */
  REFUSED,
  /** Stopped by somebody, or by a fault; nothing was changed. */
  FAILED,
  DONE,
  UNDONE;

  /** Whether the server is at it, or will be. */
  boolean isAtWork() {
    return this == WAITING || this == RUNNING;
  }

  /** Whether it is over for good. */
  boolean isOver() {
    return this == DONE || this == UNDONE;
  }
}
