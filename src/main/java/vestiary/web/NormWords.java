package vestiary.web;

import static vestiary.web.Speech.say;

import java.time.LocalDate;
import java.util.Locale;
import vestiary.calendar.Colour;
import vestiary.calendar.Reason;
import vestiary.calendar.Sentence;

/** What the calendar says of days and Masses, in the language of the present request. */
public final class NormWords {

  private NormWords() {}

  public static String of(Sentence sentence) {
    return Speech.isOfTheRecord()
        ? sentence.english()
        : say(sentence.pattern(), sentence.values().stream().map(NormWords::value).toArray());
  }

  /** Sentence and source in one, for example "White, for Easter Time (GIRM 346 a).". */
  public static String cited(Reason reason) {
    String said = of(reason.said());
    return "%s (%s).".formatted(said.substring(0, said.length() - 1), source(reason.source()));
  }

  /** The norm, by the name that books of the reader's language give it. */
  public static String source(String source) {
    return source.replace("GIRM", say("GIRM")).replace("common practice", say("common practice"));
  }

  private static Object value(Object value) {
    if (value instanceof Sentence.Named named) {
      return named.name().in(Speech.localeOr(Locale.ENGLISH));
    }
    if (value instanceof Sentence sentence) {
      return of(sentence);
    }
    if (value instanceof Sentence.Lowered lowered) {
      return lowered(of(lowered.sentence()));
    }
    if (value instanceof Sentence.Cited cited) {
      return cited.atHead() ? cited(cited.reason()) : lowered(cited(cited.reason()));
    }
    if (value instanceof Sentence.Ordinal ordinal) {
      return Speech.ordinal(ordinal.number());
    }
    if (value instanceof LocalDate date) {
      return say("%s %d", Speech.day(date), date.getYear());
    }
    return value instanceof Colour colour ? Speech.sentence(Speech.colour(colour)) : value;
  }

  private static String lowered(String words) {
    return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
  }
}
