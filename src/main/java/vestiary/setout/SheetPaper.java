package vestiary.setout;

import vestiary.calendar.Term;

/** The paper of a sheet: for the vesting table, or a card that hangs on the hanger. ISO 216. */
enum SheetPaper implements Term {
  A4,
  A6
}
