package vestiary.calendar;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * What the calendar says, with its values kept apart, so that whoever shows it can say it in
 * another language.
 *
 * @param pattern in English, with its values as {@link String#format} has them
 * @param values in the order of the pattern: {@link Named}, {@link Ordinal}, {@link Cited}, {@link
 *     Lowered}, sentences, dates, colours at the head of a sentence, numbers, and text that is the
 *     same in every language
 */
public record Sentence(String pattern, List<Object> values) {

  static final Sentence NOTHING = new Sentence("", List.of());

  public Sentence {
    Objects.requireNonNull(pattern);
    values = List.copyOf(values);
  }

  static Sentence of(String pattern, Object... values) {
    return new Sentence(pattern, List.of(values));
  }

  /** The whole of it in English. */
  public String english() {
    return values.isEmpty()
        ? pattern
        : String.format(Locale.ROOT, pattern, values.stream().map(Sentence::inEnglish).toArray());
  }

  private static Object inEnglish(Object value) {
    if (value instanceof Named named) return named.english();
    if (value instanceof Sentence sentence) return sentence.english();
    if (value instanceof Cited cited) return cited.english();
    if (value instanceof Lowered lowered) return lowered(lowered.sentence().english());
    if (value instanceof Ordinal ordinal) return lowered(OrdinalNames.english(ordinal.number()));
    if (value instanceof LocalDate date) return Dates.spelled(date);
    if (value instanceof Colour colour) return raised(colour.id());
    return value;
  }

  private static String raised(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static String lowered(String words) {
    return Character.toLowerCase(words.charAt(0)) + words.substring(1);
  }

  /**
   * A name.
   *
   * @param english as it stands in that place of an English sentence
   */
  public record Named(LocalName name, String english) {

    static Named alone(LocalName name) {
      return new Named(name, name.english());
    }

    static Named within(LocalName name) {
      return new Named(name, name.inSentence());
    }

    static Named atHead(LocalName name) {
      return new Named(name, raised(name.inSentence()));
    }
  }

  /** Which week it is: {@code third}. */
  public record Ordinal(int number) {}

  /** A sentence that follows a colon. */
  public record Lowered(Sentence sentence) {}

  /**
   * A rule with its source.
   *
   * @param atHead whether it begins with a capital letter
   */
  public record Cited(Reason reason, boolean atHead) {

    String english() {
      return atHead ? reason.cited() : lowered(reason.cited());
    }
  }
}
