package vestiary.reservation;

import vestiary.calendar.Term;

/** What has become of a reservation. */
enum ReservationState implements Term {
  /** Set aside; no plan touches it. */
  HELD,
  /** Taken out of the cupboard. */
  OUT,
  /** Back again. */
  RETURNED,
  /** Given up before it was taken out. */
  RELEASED;

  /** Whether the pieces are kept from everybody else. */
  boolean stands() {
    return this == HELD || this == OUT;
  }
}
