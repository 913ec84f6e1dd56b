package vestiary.problem;

import java.text.Normalizer;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * How text is kept: the same letters in the same way (Unicode normalization form C), without marks
 * that nobody sees, so that two names that look alike are alike.
 *
 * <p>Source: RFC 8264, 4.3 (control characters are no part of free text) and RFC 8265, 4.2
 * (normalization form C); Unicode Technical Report 36, 2.9 (writing direction turned round).
 */
public final class Writing {

  /** Soft hyphen, zero-width space, word joiner, byte order mark and the tags beyond. */
  private static final Pattern UNSEEN =
      Pattern.compile("[\\u00AD\\u200B\\u2060-\\u2064\\uFEFF\\x{E0000}-\\x{E007F}]");

  /** They shape the letters of some scripts, and change nothing about others. */
  private static final Pattern IDLE_JOINERS =
      Pattern.compile(
          "(?<![\\p{L}\\p{M}\\p{So}&&[^\\p{IsLatin}\\p{IsGreek}\\p{IsCyrillic}]])[\\u200C\\u200D]");

  private Writing() {}

  /** Without surrounding blanks and what nobody sees, in normalization form C. */
  public static String tidy(String text) {
    String seen = IDLE_JOINERS.matcher(UNSEEN.matcher(text).replaceAll("")).replaceAll("");
    return Normalizer.normalize(seen, Normalizer.Form.NFC).strip();
  }

  /** The first character that is no part of any text: a control, or half of a pair. */
  static OptionalInt findUnfit(String text) {
    return text.codePoints().filter(Writing::isUnfit).findFirst();
  }

  private static boolean isUnfit(int c) {
    boolean isLayout = c == '\t' || c == '\n' || c == '\r';
    return Character.getType(c) == Character.SURROGATE
        || Character.isISOControl(c) && !isLayout
        || turnsWriting(c);
  }

  /**
   * Source: Unicode Standard Annex 9, table 4 and section 2 (directional formatting characters).
   */
  private static boolean turnsWriting(int c) {
    return c == 0x061C
        || c == 0x200E
        || c == 0x200F
        || c >= 0x202A && c <= 0x202E
        || c >= 0x2066 && c <= 0x2069;
  }
}
