package vestiary.inventory;

import static vestiary.web.Speech.say;

import vestiary.calendar.Term;

/** What somebody saw who looked for a piece. */
public enum Finding implements Term {
  THERE,
  MISSING,
  /** Not in its place, and somewhere else. */
  ELSEWHERE,
  DAMAGED;

  /** For example "in another place". */
  String words() {
    return switch (this) {
      case THERE -> say("there");
      case MISSING -> say("missing");
      case ELSEWHERE -> say("in another place");
      case DAMAGED -> say("damaged");
    };
  }
}
