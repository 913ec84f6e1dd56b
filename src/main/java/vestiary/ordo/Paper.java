package vestiary.ordo;

import vestiary.calendar.Term;

/** The paper an ordo is laid out for: sheets to pin up, or a booklet to staple. ISO 216. */
enum Paper implements Term {
  A4,
  A5
}
