package vestiary.reservation;

import vestiary.calendar.Term;

/** What has become of a wish. */
enum WishState implements Term {
  /** Not answered yet. */
  OPEN,
  /** Yes: it was set aside for whoever asked. */
  GRANTED,
  /** No; who asked is still told when it becomes free. */
  REFUSED,
  /** Taken back. */
  WITHDRAWN;

  /** Whether whoever asked is still to be told when it becomes free. */
  boolean waits() {
    return this == OPEN || this == REFUSED;
  }
}
