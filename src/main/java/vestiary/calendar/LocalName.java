package vestiary.calendar;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A name in English, Latin and Spanish; the last two are empty where the calendar has none.
 *
 * @param english never blank
 */
public record LocalName(String english, String latin, String spanish) {

  private static final Pattern NEEDS_ARTICLE =
      Pattern.compile("[A-Z][a-z-]+ (Sunday|Day|Memorial|of the Dedication)\\b");

  public LocalName {
    if (english.isBlank()) throw new IllegalArgumentException("A name needs its English form.");
  }

  /** The name in this language, or in English where that is missing. */
  public String in(Locale locale) {
    return isTranslated(locale) ? translation(locale) : english;
  }

  /** Whether the name has a form of its own in this language. */
  public boolean isTranslated(Locale locale) {
    return !translation(locale).isEmpty();
  }

  /**
   * The English name as it stands within a sentence: Sundays and the days of an octave take an
   * article, saints and weekdays none.
   */
  public String inSentence() {
    if (english.startsWith("The ")) return "the " + english.substring(4);
    return NEEDS_ARTICLE.matcher(english).lookingAt() ? "the " + english : english;
  }

  private String translation(Locale locale) {
    return switch (locale.getLanguage()) {
      case "en" -> english;
      case "la" -> latin;
      case "es" -> spanish;
      default -> "";
    };
  }
}
