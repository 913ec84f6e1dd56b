package vestiary.web;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import vestiary.calendar.Colour;

/** How pages say counts, dates and lists in English. */
public final class English {

  private static final List<String> NUMBERS =
      List.of(
          "no",
          "one",
          "two",
          "three",
          "four",
          "five",
          "six",
          "seven",
          "eight",
          "nine",
          "ten",
          "eleven",
          "twelve",
          "thirteen",
          "fourteen",
          "fifteen",
          "sixteen",
          "seventeen",
          "eighteen",
          "nineteen",
          "twenty");

  private static final List<String> ORDINALS =
      List.of("", "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth");

  private static final DateTimeFormatter DAY = pattern("EEEE d MMMM");
  private static final DateTimeFormatter DATE = pattern("d MMMM");
  private static final DateTimeFormatter DATE_AND_YEAR = pattern("d MMMM uuuu");
  private static final DateTimeFormatter MONTH_AND_YEAR = pattern("MMMM uuuu");
  private static final DateTimeFormatter WEEKDAY = pattern("EEEE");
  private static final DateTimeFormatter CLOCK = pattern("HH:mm");

  private English() {}

  /** In words up to twenty, in digits beyond: {@code three}, {@code 21}. */
  public static String count(int number) {
    return number < NUMBERS.size() ? NUMBERS.get(number) : String.valueOf(number);
  }

  /** With its noun: {@code one set}, {@code three sets}, {@code no sets}. */
  public static String count(int number, String noun) {
    return count(number) + " " + noun + (number == 1 ? "" : plural(noun));
  }

  /** In words up to eighth, in digits beyond: {@code third}, {@code 12th}. */
  public static String ordinal(int number) {
    if (number < ORDINALS.size()) {
      return ORDINALS.get(number);
    }
    return switch (number % 10) {
      case 1 -> number + (number == 11 ? "th" : "st");
      case 2 -> number + (number == 12 ? "th" : "nd");
      case 3 -> number + (number == 13 ? "th" : "rd");
      default -> number + "th";
    };
  }

  /** With a capital letter at its head. */
  public static String sentence(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  public static String list(List<String> items) {
    return joined(items, "and");
  }

  /** {@code a}, {@code a or b}, {@code a, b or c}. */
  public static String choice(List<String> items) {
    return joined(items, "or");
  }

  /** Colours to choose from: {@code violet or white}. */
  public static String colours(List<Colour> colours) {
    return choice(colours.stream().map(Colour::id).toList());
  }

  /** {@code Tuesday 8 December}. */
  public static String day(LocalDate date) {
    return DAY.format(date);
  }

  /** {@code 8 December}. */
  public static String date(LocalDate date) {
    return DATE.format(date);
  }

  /** {@code 8 December 2026}. */
  public static String dateAndYear(LocalDate date) {
    return DATE_AND_YEAR.format(date);
  }

  /** {@code December 2026}. */
  public static String monthAndYear(LocalDate date) {
    return MONTH_AND_YEAR.format(date);
  }

  /** {@code Tuesday}. */
  public static String weekday(LocalDate date) {
    return WEEKDAY.format(date);
  }

  /** {@code 18:30}, on the clock of the time's own zone. */
  public static String clock(ZonedDateTime time) {
    return CLOCK.format(time);
  }

  /**
   * {@code 30 November to 6 December 2026}; both years where they differ, one date where it is one.
   */
  public static String span(LocalDate first, LocalDate last) {
    if (first.equals(last)) {
      return dateAndYear(first);
    }
    String from = first.getYear() == last.getYear() ? date(first) : dateAndYear(first);
    boolean oneMonth = first.getYear() == last.getYear() && first.getMonth() == last.getMonth();
    return (oneMonth ? String.valueOf(first.getDayOfMonth()) : from) + " to " + dateAndYear(last);
  }

  private static String joined(List<String> items, String word) {
    if (items.size() < 2) {
      return String.join("", items);
    }
    String head = String.join(", ", items.subList(0, items.size() - 1));
    return head + " " + word + " " + items.get(items.size() - 1);
  }

  private static String plural(String noun) {
    return noun.endsWith("s") || noun.endsWith("ch") ? "es" : "s";
  }

  private static DateTimeFormatter pattern(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH);
  }
}
