package vestiary.reservation;

/** What a form carries along and does not show. */
record Hidden(String name, String value) {}
