package vestiary.web;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import vestiary.calendar.Colour;
import vestiary.calendar.Reason;
import vestiary.calendar.Sentence;

/** What the calendar says of days and Masses, in the language of the present request. */
public final class NormWords {

  /** Books, days and remarks in sources, by which norms are cited; longer ones first. */
  private static final List<String> IN_SOURCES =
      List.of(
          word("GIRM"),
          word("common practice, no source"),
          word("common practice"),
          word("Ceremonial of Bishops"),
          word("Roman Missal, Good Friday"),
          word("Roman Missal"),
          word("Palm Sunday"),
          word("Thursday of the Lord's Supper"),
          word("General Roman Calendar"),
          word("Calendar of United States"),
          word("Calendar of England"),
          word("Calendar of Wales"),
          word("Calendar of Ireland"),
          word("Calendar of Canada"),
          word("proper of the United States"),
          word("for the United States"),
          word("rubrics of the Masses for various needs"),
          word("rubrics of this Mass"),
          word("Holy Communion and Worship of the Eucharist"),
          word("Rite of Christian Initiation of Adults"),
          word("Rites of Ordination, of deacons"),
          word("Rites of Ordination, of priests"),
          word("Order of Christian Funerals"),
          word("the rituals: a cope may be worn"),
          word("the rituals: alb or surplice, and stole"),
          word("the rituals"),
          word("(from memory)"));

  private static final List<String> BETWEEN = List.of(word("to"), word("and"));

  /** Between the numbers of two paragraphs: {@code to} or {@code and}. */
  private static final Pattern NUMBERS =
      Pattern.compile("(?<=\\d) (%s) (?=\\d)".formatted(String.join("|", BETWEEN)));

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
    if (Speech.isOfTheRecord()) {
      return source;
    }
    String said = source;
    for (String english : IN_SOURCES) {
      said = said.replace(english, say(english));
    }
    return NUMBERS.matcher(said).replaceAll(NormWords::between);
  }

  private static String between(MatchResult found) {
    return " %s ".formatted(say(found.group(1)));
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
