package vestiary.reservation;

import static vestiary.web.Speech.say;

import vestiary.web.Speech;

/** Wishes in the words of pages and mails. */
final class WishWords {

  private WishWords() {}

  /** Who asks for what and for which Mass. */
  static String asked(Wish wish) {
    return say(
        "%s asks for %s for %s.%s",
        capital(wish.by()), wish.code(), ReservationWords.about(wish.mass()), said(wish.note()));
  }

  /** What was answered. */
  static String answered(Wish wish) {
    return switch (wish.state()) {
      case GRANTED ->
          say(
              "Yes: %s is set aside for %s.%s",
              wish.code(), ReservationWords.about(wish.mass()), said(wish.answer()));
      case REFUSED ->
          say(
              "No: %s cannot be had for %s.%s You are told if it becomes free.",
              wish.code(), ReservationWords.about(wish.mass()), said(wish.answer()));
      case OPEN, WITHDRAWN ->
          say("%s has not answered yet about %s.", wish.keeper().name(), wish.code());
    };
  }

  /** That it can be had now. */
  static String free(Wish wish) {
    return say(
        "%s is free now for %s. Set it aside before somebody else does.",
        wish.code(), ReservationWords.about(wish.mass()));
  }

  private static String said(String word) {
    return word.isEmpty() ? "" : " “%s”".formatted(word);
  }

  private static String capital(String name) {
    return Speech.sentence(name);
  }
}
