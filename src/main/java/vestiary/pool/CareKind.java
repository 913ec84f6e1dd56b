package vestiary.pool;

import vestiary.calendar.Term;

/** What is wrong with a piece in care. */
public enum CareKind implements Term {
  MENDING,
  CLEANER,
  STAIN,
  MISSING_BUTTON,
  /** Nobody knows where it is. */
  MISSING,
  OTHER;

  /** A reason where nobody gave one, for example "At the cleaner". */
  public String words() {
    return switch (this) {
      case MENDING -> "Needs mending";
      case CLEANER -> "At the cleaner";
      case STAIN -> "Stained";
      case MISSING_BUTTON -> "A button is missing";
      case MISSING -> "Missing";
      case OTHER -> "Something else";
    };
  }
}
