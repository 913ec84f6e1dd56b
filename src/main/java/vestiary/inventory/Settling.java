package vestiary.inventory;

import java.util.List;
import vestiary.calendar.Term;
import vestiary.web.Speech;

/** What is done about a difference between the list and the sacristy. */
public enum Settling implements Term {
  /** It leaves the pool until it is found. */
  MARK_MISSING(Speech.word("Mark it missing")),
  /** Where it was found is its place from now on. */
  NEW_PLACE(Speech.word("That is its place now")),
  /** It goes into care. */
  IN_CARE(Speech.word("Put it in care")),
  /** The church where it was found is its home from now on. */
  STAYS_HERE(Speech.word("It stays here")),
  /** It is taken to the church where it belongs. */
  SEND_HOME(Speech.word("It is taken home")),
  /** Somebody put it right on the spot. */
  PUT_RIGHT(Speech.word("Put right on the spot"));

  private final String words;

  Settling(String words) {
    this.words = words;
  }

  String words() {
    return Speech.say(words);
  }

  /** What can be done about that, the usual first. */
  static List<Settling> of(StocktakeLine line) {
    if (!line.expected()) {
      return List.of(SEND_HOME, STAYS_HERE);
    }
    return switch (line.finding().get(0)) {
      case MISSING -> List.of(MARK_MISSING, PUT_RIGHT);
      case ELSEWHERE -> List.of(NEW_PLACE, PUT_RIGHT);
      case DAMAGED -> List.of(IN_CARE, PUT_RIGHT);
      case THERE -> List.of();
    };
  }
}
