package vestiary.web;

import io.quarkus.arc.Arc;
import io.quarkus.arc.ArcContainer;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import vestiary.calendar.Colour;

/**
 * What pages and answers say, in the language of the present request; in English outside one, so
 * that what a job writes down does not depend on who asked last.
 *
 * <p>The English sentence stands where it is said and is the key of its Spanish, as in the
 * templates; {@code words/said} has the Spanish.
 */
public final class Speech {

  private Speech() {}

  /**
   * That sentence with the values in their places, as {@link String#format} writes them.
   *
   * @param english the sentence, which is written out here or marked by {@link #word}
   */
  public static String say(String english, Object... values) {
    if (isSpanish()) {
      return Spanish.say(Said.inSpanish(english), values);
    }
    return values.length == 0 ? english : String.format(Locale.ROOT, english, values);
  }

  /**
   * The same of a sentence that Spanish says otherwise of one than of many; that of one is kept
   * under the English with {@code (1)} after it.
   */
  public static String sayOf(int number, String english, Object... values) {
    return number == 1 && isSpanish()
        ? Spanish.say(Said.inSpanish(english + " (1)"), values)
        : say(english, values);
  }

  /** Marks words that are said later, and leaves them as they are. */
  public static String word(String english) {
    return english;
  }

  /** In words up to twenty, in digits beyond: {@code three}, {@code 21}. */
  public static String count(int number) {
    return isSpanish() ? Spanish.count(number) : English.count(number);
  }

  /**
   * With its noun: {@code one set}, {@code three sets}, {@code no sets}.
   *
   * @param noun the English one, in the singular
   */
  public static String count(int number, String noun) {
    return isSpanish() ? Spanish.count(number, Said.noun(noun)) : English.count(number, noun);
  }

  /** A word that is kept as a term, such as the kind of a piece; as it stands if it is none. */
  public static String term(String english) {
    return isSpanish() ? Said.term(english) : english;
  }

  /** The noun as it follows that number. */
  public static String noun(int number, String noun) {
    if (isSpanish()) {
      return Said.noun(noun).after(number);
    }
    return number == 1 ? noun : noun + "s";
  }

  /**
   * So many of what is said in more words than its noun: {@code two white sets}.
   *
   * @param noun the English one, in the singular
   * @param words with the noun as {@link #noun} gives it for that number
   */
  public static String count(int number, String noun, String words) {
    return isSpanish()
        ? Spanish.article(number, Said.noun(noun)) + " " + words
        : English.count(number) + " " + words;
  }

  /** {@code a white set}, {@code an alb}, with the words as for {@link #count}. */
  public static String one(String noun, String words) {
    return isSpanish()
        ? Spanish.article(1, Said.noun(noun)) + " " + words
        : (words.startsWith("a") ? "an " : "a ") + words;
  }

  /** {@code the celebrant}. */
  public static String the(String noun) {
    return isSpanish() ? Spanish.the(Said.noun(noun)) : "the " + noun;
  }

  /** The title that stands before a name within a sentence: {@code Father}, {@code el padre}. */
  public static String titled(String title) {
    return isSpanish() ? Spanish.titled(title) : title;
  }

  /** {@code white sets}: the colour stands where the language has it. */
  public static String tinted(String colour, String words) {
    return isSpanish() ? words + " de color " + colour : colour + " " + words;
  }

  /** In words up to eighth, in digits beyond: {@code third}, {@code 12th}. */
  public static String ordinal(int number) {
    return isSpanish() ? Spanish.ordinal(number) : English.ordinal(number);
  }

  /** Which of several: {@code second concelebrant}. */
  public static String nth(int number, String noun) {
    return isSpanish()
        ? Said.noun(noun).one() + " " + number
        : English.ordinal(number) + " " + noun;
  }

  /** With a capital letter at its head. */
  public static String sentence(String words) {
    return English.sentence(words);
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  public static String list(List<String> items) {
    return isSpanish() ? Spanish.list(items) : English.list(items);
  }

  /** {@code a}, {@code a or b}, {@code a, b or c}. */
  public static String choice(List<String> items) {
    return isSpanish() ? Spanish.choice(items) : English.choice(items);
  }

  public static String colour(Colour colour) {
    return isSpanish() ? Said.inSpanish(colour.id()) : colour.id();
  }

  /** Colours to choose from: {@code violet or white}. */
  public static String colours(List<Colour> colours) {
    return choice(colours.stream().map(Speech::colour).toList());
  }

  /**
   * In which language names of celebrations are read.
   *
   * @param cluster the cluster's own, where nobody asks
   */
  public static Locale localeOr(Locale cluster) {
    return locale().orElse(cluster);
  }

  /** {@code Tuesday 8 December}. */
  public static String day(LocalDate date) {
    return isSpanish() ? Spanish.day(date) : English.day(date);
  }

  /** {@code 8 December}. */
  public static String date(LocalDate date) {
    return isSpanish() ? Spanish.date(date) : English.date(date);
  }

  /** The same where there is little room, as in a picture. */
  public static String shortDate(LocalDate date) {
    return isSpanish() ? Spanish.shortDate(date) : English.date(date);
  }

  /** {@code 8 December 2026}. */
  public static String dateAndYear(LocalDate date) {
    return isSpanish() ? Spanish.dateAndYear(date) : English.dateAndYear(date);
  }

  /** {@code December 2026}. */
  public static String monthAndYear(LocalDate date) {
    return isSpanish() ? Spanish.monthAndYear(date) : English.monthAndYear(date);
  }

  /** {@code Tuesday}. */
  public static String weekday(LocalDate date) {
    return isSpanish() ? Spanish.weekday(date) : English.weekday(date);
  }

  /** {@code Mondays}. */
  public static String weekdays(DayOfWeek day) {
    return isSpanish()
        ? Spanish.weekdays(day)
        : day.getDisplayName(TextStyle.FULL, Locale.ENGLISH) + "s";
  }

  /** {@code 18:30}, on the clock of the time's own zone. */
  public static String clock(ZonedDateTime time) {
    return English.clock(time);
  }

  /**
   * {@code 30 November to 6 December 2026}; both years where they differ, one date where it is one.
   */
  public static String span(LocalDate first, LocalDate last) {
    return isSpanish() ? Spanish.span(first, last) : English.span(first, last);
  }

  /**
   * Does that in English, whoever asks: what is kept and compared with what is said later must not
   * change with the reader.
   */
  public static <T> T forTheRecord(Supplier<T> deed) {
    return isSpanish() ? in(Locale.ENGLISH, deed) : deed.get();
  }

  /**
   * Does that in the language of somebody else than whoever asks, as of the reader of a letter.
   *
   * @param language one that pages are written in
   * @throws jakarta.enterprise.context.ContextNotActiveException outside requests and jobs
   */
  public static <T> T in(Locale language, Supplier<T> deed) {
    return Arc.container().instance(PageLanguage.class).get().during(language, deed);
  }

  /** Whether the present request is answered in the language in which things are kept. */
  public static boolean isOfTheRecord() {
    return !isSpanish();
  }

  /** The language of the present request; empty outside one. */
  public static Optional<Locale> locale() {
    ArcContainer container = Arc.container();
    return container != null && container.requestContext().isActive()
        ? container.instance(PageLanguage.class).get().find()
        : Optional.empty();
  }

  private static boolean isSpanish() {
    return locale().filter(Spanish.LOCALE::equals).isPresent();
  }
}
