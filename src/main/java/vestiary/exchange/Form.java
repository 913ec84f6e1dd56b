package vestiary.exchange;

import java.util.Locale;
import java.util.regex.Pattern;

/** How a name that other lines refer to must be written. */
enum Form {
  SLUG(
      "[a-z0-9]+(-[a-z0-9]+)*",
      60,
      "Write small letters, digits and single hyphens, at most 60 characters."),
  CODE(
      "[A-Z0-9]+(-[A-Z0-9]+)*",
      40,
      "Write letters without accents, digits and single hyphens, at most 40 characters.");

  private final Pattern pattern;
  private final int longest;
  private final String wanted;

  Form(String pattern, int longest, String wanted) {
    this.pattern = Pattern.compile(pattern);
    this.longest = longest;
    this.wanted = wanted;
  }

  /** The text in the letter case of this form, however it was typed. */
  String cased(String text) {
    return this == CODE ? text.toUpperCase(Locale.ROOT) : text.toLowerCase(Locale.ROOT);
  }

  boolean fits(String text) {
    return text.length() <= longest && pattern.matcher(text).matches();
  }

  /** What may stand there, as a sentence. */
  String wanted() {
    return wanted;
  }
}
