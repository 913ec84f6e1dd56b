package vestiary.ordo;

import java.util.List;
import java.util.Locale;
import vestiary.calendar.Celebration;
import vestiary.calendar.Day;
import vestiary.calendar.LocalName;
import vestiary.calendar.Rank;
import vestiary.cluster.Church;
import vestiary.web.Celebrated;
import vestiary.web.DayWords;
import vestiary.web.Ribbon;
import vestiary.web.Speech;

/** Names in the language of the ordo, each marked with its language where the page has another. */
final class OrdoNames {

  private final Locale locale;

  OrdoNames(Locale locale) {
    this.locale = locale;
  }

  OrdoView.Named named(String lead, Celebration celebration) {
    return new OrdoView.Named(
        DayWords.celebrated(lead, celebration, locale), language(celebration.name()));
  }

  /**
   * The same on its own day, where a weekday in the language of the page need not say its week
   * again.
   */
  OrdoView.Named onItsDay(String lead, Celebration celebration, Day day) {
    if (celebration.rank() != Rank.FERIA || !isOfPage()) {
      return named(lead, celebration);
    }
    Celebrated weekday = DayWords.tight(lead, celebration, day, locale);
    return new OrdoView.Named(weekday, "");
  }

  OrdoView.Text text(LocalName name) {
    return new OrdoView.Text(name.in(locale), language(name));
  }

  /** The language of a name if it has to be said, as a BCP 47 tag; otherwise empty. */
  String language(LocalName name) {
    boolean isTranslated = name.isTranslated(locale);
    return isTranslated && isOfPage()
        ? ""
        : (isTranslated ? locale : Locale.ENGLISH).toLanguageTag();
  }

  private boolean isOfPage() {
    return locale.getLanguage().equals(Speech.localeOr(Locale.ENGLISH).getLanguage());
  }

  static List<Ribbon> ribbons(Celebration celebration) {
    return celebration.colours().stream().map(DayWords::ribbon).toList();
  }

  /** A church as it is told from another of the same name. */
  static String church(Church church) {
    return church.place().isBlank() ? church.name() : church.name() + ", " + church.place();
  }
}
