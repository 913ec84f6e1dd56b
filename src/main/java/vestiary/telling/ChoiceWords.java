package vestiary.telling;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The form in which somebody chooses letters, in their language. */
final class ChoiceWords {

  private ChoiceWords() {}

  static StopView.Choice of(LetterWish wish, Telling telling, Tongue tongue, String action) {
    return new StopView.Choice(
        action,
        tongue.say("stop.choose"),
        tongue.say(
            "stop.week",
            tongue.say("weekday." + telling.weekday().getValue()),
            telling.hour().toString()),
        wish.week(),
        tongue.say("stop.change"),
        wish.changes(),
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
