package vestiary.calendar;

import java.util.Locale;

/**
 * A name in English, Latin and Spanish; the last two are empty where the calendar has none.
 *
 * @param english never blank
 */
public record LocalName(String english, String latin, String spanish) {

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

  private String translation(Locale locale) {
    return switch (locale.getLanguage()) {
      case "en" -> english;
      case "la" -> latin;
      case "es" -> spanish;
      default -> "";
    };
  }
}
