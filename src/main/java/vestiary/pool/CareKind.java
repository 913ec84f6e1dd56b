package vestiary.pool;

import static vestiary.web.Speech.say;

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
      case MENDING -> say("Needs mending");
      case CLEANER -> say("At the cleaner");
      case STAIN -> say("Stained");
      case MISSING_BUTTON -> say("A button is missing");
      case MISSING -> say("Missing");
      case OTHER -> say("Something else");
    };
  }
}
