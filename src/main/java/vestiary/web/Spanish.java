package vestiary.web;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** How pages say counts, dates and lists in Spanish. */
final class Spanish {

  static final Locale LOCALE = Locale.forLanguageTag("es");

  private static final List<String> NUMBERS =
      List.of(
          "ninguno",
          "uno",
          "dos",
          "tres",
          "cuatro",
          "cinco",
          "seis",
          "siete",
          "ocho",
          "nueve",
          "diez",
          "once",
          "doce",
          "trece",
          "catorce",
          "quince",
          "dieciséis",
          "diecisiete",
          "dieciocho",
          "diecinueve",
          "veinte");

  /** Of weeks and Masses, which are feminine; nothing else is numbered so. */
  private static final List<String> ORDINALS =
      List.of(
          "", "primera", "segunda", "tercera", "cuarta", "quinta", "sexta", "séptima", "octava");

  private static final DateTimeFormatter DAY = pattern("EEEE d 'de' MMMM");
  private static final DateTimeFormatter DATE = pattern("d 'de' MMMM");
  private static final DateTimeFormatter SHORT = pattern("d MMM");
  private static final DateTimeFormatter DATE_AND_YEAR = pattern("d 'de' MMMM 'de' uuuu");
  private static final DateTimeFormatter MONTH_AND_YEAR = pattern("MMMM 'de' uuuu");
  private static final DateTimeFormatter WEEKDAY = pattern("EEEE");

  private static final Pattern ENDED = Pattern.compile("\\.(%s)?$");

  /** Its space does not break, by which it is told from what people wrote themselves. */
  private static final String ARTICLE = "el\u00A0";

  private static final Pattern UNCONTRACTED = Pattern.compile("\\b([Dd]e|[Aa]) " + ARTICLE);

  private Spanish() {}

  /**
   * That sentence with the values in their places. A value may bring its article, which grows
   * together with the word before it and takes the capital of a sentence that it begins.
   */
  static String say(String sentence, Object... values) {
    if (values.length == 0) {
      return sentence;
    }
    String said =
        UNCONTRACTED.matcher(String.format(Locale.ROOT, sentence, values)).replaceAll("$1l ");
    return said.startsWith(ARTICLE) && sentence.startsWith("%") && ENDED.matcher(sentence).find()
        ? English.sentence(said)
        : said;
  }

  /** {@code el padre}: titles of people are written small (Ortografía 2010, from memory). */
  static String titled(String title) {
    return ARTICLE + title.toLowerCase(LOCALE);
  }

  /** In words up to twenty, in digits beyond, of nothing in particular. */
  static String count(int number) {
    return number < NUMBERS.size() ? NUMBERS.get(number) : String.valueOf(number);
  }

  /** {@code un juego}, {@code ninguna Misa}, {@code tres estolas}. */
  static String count(int number, Noun noun) {
    return article(number, noun) + " " + noun.after(number);
  }

  /** What stands before that noun. */
  static String article(int number, Noun noun) {
    return switch (number) {
      case 0 -> noun.feminine() ? "ninguna" : "ningún";
      case 1 -> noun.feminine() ? "una" : "un";
      default -> count(number);
    };
  }

  static String the(Noun noun) {
    return (noun.feminine() ? "la " : "el ") + noun.one();
  }

  static String ordinal(int number) {
    return number < ORDINALS.size() ? ORDINALS.get(number) : number + ".ª";
  }

  static String list(List<String> items) {
    return joined(items, "y", "e", "(?iu)h?[ií](?!e).*");
  }

  static String choice(List<String> items) {
    return joined(items, "o", "u", "(?iu)h?[oó].*");
  }

  static String day(LocalDate date) {
    return DAY.format(date);
  }

  static String date(LocalDate date) {
    return DATE.format(date);
  }

  static String shortDate(LocalDate date) {
    return SHORT.format(date);
  }

  static String dateAndYear(LocalDate date) {
    return DATE_AND_YEAR.format(date);
  }

  static String monthAndYear(LocalDate date) {
    return MONTH_AND_YEAR.format(date);
  }

  static String weekday(LocalDate date) {
    return WEEKDAY.format(date);
  }

  /** {@code lunes}, {@code sábados}. */
  static String weekdays(DayOfWeek day) {
    String one = day.getDisplayName(TextStyle.FULL, LOCALE);
    return one.endsWith("s") ? one : one + "s";
  }

  static String span(LocalDate first, LocalDate last) {
    if (first.equals(last)) {
      return dateAndYear(first);
    }
    String from = first.getYear() == last.getYear() ? date(first) : dateAndYear(first);
    boolean oneMonth = first.getYear() == last.getYear() && first.getMonth() == last.getMonth();
    return (oneMonth ? String.valueOf(first.getDayOfMonth()) : from) + " al " + dateAndYear(last);
  }

  /** The word changes where the next one begins with its sound. */
  private static String joined(List<String> items, String word, String before, String sound) {
    if (items.size() < 2) {
      return String.join("", items);
    }
    String last = items.get(items.size() - 1);
    String head = String.join(", ", items.subList(0, items.size() - 1));
    return "%s %s %s".formatted(head, last.matches("(?s)" + sound) ? before : word, last);
  }

  private static DateTimeFormatter pattern(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, LOCALE);
  }

  /**
   * What is counted.
   *
   * @param one in the singular
   * @param many in the plural
   */
  record Noun(String one, String many, boolean feminine) {

    /** As it follows that number. */
    String after(int number) {
      return number < 2 ? one : many;
    }
  }
}
