package vestiary.reservation;

import vestiary.web.English;

/** Wishes in the words of pages and mails. */
final class WishWords {

  private WishWords() {}

  /** Who asks for what and for which Mass. */
  static String asked(Wish wish) {
    return "%s asks for %s for %s.%s"
        .formatted(
            capital(wish.by()),
            wish.code(),
            ReservationWords.about(wish.mass()),
            said(wish.note()));
  }

  /** What was answered. */
  static String answered(Wish wish) {
    return switch (wish.state()) {
      case GRANTED ->
          "Yes: %s is set aside for %s.%s"
              .formatted(wish.code(), ReservationWords.about(wish.mass()), said(wish.answer()));
      case REFUSED ->
          "No: %s cannot be had for %s.%s You are told if it becomes free."
              .formatted(wish.code(), ReservationWords.about(wish.mass()), said(wish.answer()));
      case OPEN, WITHDRAWN ->
          "%s has not answered yet about %s.".formatted(wish.keeper().name(), wish.code());
    };
  }

  /** That it can be had now. */
  static String free(Wish wish) {
    return "%s is free now for %s. Set it aside before somebody else does."
        .formatted(wish.code(), ReservationWords.about(wish.mass()));
  }

  private static String said(String word) {
    return word.isEmpty() ? "" : " “%s”".formatted(word);
  }

  private static String capital(String name) {
    return English.sentence(name);
  }
}
