package vestiary.lending;

import vestiary.calendar.Term;

/** How far a lending has come; each step is for one side to say. */
enum LendingState implements Term {
  /** By the lender; the pieces are still his to use. */
  OFFERED,

  /** By the borrower: the pieces are his for the time, and away from the lender's pool. */
  ACCEPTED,

  /** By the borrower. */
  DECLINED,

  /** By the lender, before it was answered. */
  WITHDRAWN,

  /** By either: they are back in the lender's pool, or never left it. */
  RETURNED;

  /** Whether anything is still to come of it. */
  boolean isOpen() {
    return this == OFFERED || this == ACCEPTED;
  }
}
