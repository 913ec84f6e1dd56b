package vestiary.telling;

import vestiary.mail.LetterKind;

/**
 * Which letters somebody wants.
 *
 * @param week what is to come, once a week
 * @param changes what has changed, at once
 * @param sacristy what has changed at the churches one cares for, at once
 * @param language BCP 47; empty for that of the cluster
 */
record LetterWish(boolean week, boolean changes, boolean sacristy, String language) {

  /** Of whoever has chosen nothing. */
  static final LetterWish USUAL = new LetterWish(true, true, true, "");

  /** Whether letters of that kind are wanted; those that nobody can stop are. */
  boolean wants(LetterKind kind) {
    return switch (kind) {
      case WEEK -> week;
      case CHANGE -> changes;
      case SACRISTY -> sacristy;
      default -> true;
    };
  }

  /** The same without letters of that kind. */
  LetterWish without(LetterKind kind) {
    return new LetterWish(
        week && kind != LetterKind.WEEK,
        changes && kind != LetterKind.CHANGE,
        sacristy && kind != LetterKind.SACRISTY,
        language);
  }
}
