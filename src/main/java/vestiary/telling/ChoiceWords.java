package vestiary.telling;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import vestiary.web.Entries;

/** The form in which somebody chooses letters, in their language. */
final class ChoiceWords {

  private ChoiceWords() {}

  /** As it was ticked; what the form did not ask stays. */
  static LetterWish wish(Entries typed, LetterWish before) {
    return new LetterWish(
        typed.isTicked("week"),
        typed.isTicked("changes"),
        typed.isTicked("asks-sacristy") ? typed.isTicked("sacristy") : before.sacristy(),
        typed.text("language"));
  }

  /**
   * The form.
   *
   * @param head name of the words over it
   * @param isSacristan whether they are asked for letters about churches
   */
  static StopView.Choice of(
      LetterWish wish,
      Telling telling,
      Tongue tongue,
      String head,
      String action,
      boolean isSacristan) {
    return new StopView.Choice(
        action,
        tongue.say(head),
        tongue.say(
            "stop.week",
            tongue.say("weekday." + telling.weekday().getValue()),
            telling.hour().toString()),
        wish.week(),
        tongue.say("stop.change"),
        wish.changes(),
        isSacristan ? tongue.say("stop.sacristy") : "",
        wish.sacristy(),
        tongue.say("stop.language"),
        languages(wish, tongue),
        tongue.say("stop.save"));
  }

  private static List<StopView.Language> languages(LetterWish wish, Tongue tongue) {
    return Stream.concat(
            Stream.of(
                new StopView.Language(
                    "", tongue.say("stop.language.cluster"), wish.language().isEmpty())),
            Tongue.ALL.stream().map(locale -> language(locale, wish)))
        .toList();
  }

  private static StopView.Language language(Locale locale, LetterWish wish) {
    String name = locale.getDisplayLanguage(locale);
    return new StopView.Language(
        locale.toLanguageTag(),
        name.substring(0, 1).toUpperCase(locale) + name.substring(1),
        wish.language().equals(locale.toLanguageTag()));
  }
}
