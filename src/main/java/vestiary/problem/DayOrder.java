package vestiary.problem;

import java.text.Normalizer;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.calendar.Term;
import vestiary.web.Speech;

/**
 * In which order people write the day, the month and the year where it is no ISO 8601 date. Months
 * may be words in English, German or Spanish.
 */
public enum DayOrder implements Term {
  DAY_MONTH_YEAR(Speech.word("day, month, year: 8/12/2026 is 8 December")),
  MONTH_DAY_YEAR(Speech.word("month, day, year: 8/12/2026 is 12 August"));

  private static final Pattern ISO = Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})");
  private static final Pattern NUMBERS =
      Pattern.compile("(\\d{1,2})\\s?([-/.])\\s?(\\d{1,2})\\s?[-/.]\\s?(\\d{4}|\\d{2})");
  private static final Pattern DAY_THEN_MONTH =
      Pattern.compile(
          "(\\d{1,2})\\.?(?:st|nd|rd|th|º)?\\s+(?:de\\s+)?(\\p{L}{3,12})\\.?,?\\s+(?:de\\s+)?(\\d{4})");
  private static final Pattern MONTH_THEN_DAY =
      Pattern.compile("(\\p{L}{3,12})\\.?\\s+(\\d{1,2})(?:st|nd|rd|th)?,?\\s+(\\d{4})");

  /** Before a date: a word that may be the day of the week, in full or short. */
  private static final Pattern WEEKDAY =
      Pattern.compile("^(\\p{L}{2,12})[.,]*\\s+(?=\\d|\\p{L}+\\.?\\s+\\d)");

  private static final List<Locale> LANGUAGES =
      List.of(Locale.ENGLISH, Locale.GERMAN, Locale.forLanguageTag("es"));

  /** By the whole name and its first two and three letters, as months. */
  private static final Set<String> WEEKDAYS = weekdays();

  /** By the whole name and its first three letters, without accents, in three languages (CLDR). */
  private static final Map<String, Integer> MONTHS = months();

  private final String words;

  DayOrder(String words) {
    this.words = words;
  }

  /** For people, with an example. */
  public String words() {
    return words;
  }

  /** The day that a text names in this order; empty if it names none. */
  public Optional<LocalDate> find(String written) {
    String text = written.strip();
    Matcher iso = ISO.matcher(text);
    if (iso.matches()) {
      return day(number(iso.group(1)), number(iso.group(2)), number(iso.group(3)));
    }
    String bare = withoutWeekday(text);
    Optional<LocalDate> spelled = spelled(text).or(() -> spelled(bare));
    return spelled.isPresent() ? spelled : inNumbers(bare);
  }

  /** Orders in which every value that is a day at all is one; both where that tells nothing. */
  public static Set<DayOrder> fitting(Collection<String> values) {
    Set<DayOrder> fitting = EnumSet.noneOf(DayOrder.class);
    List<String> days = values.stream().filter(DayOrder::isDay).toList();
    for (DayOrder order : values()) {
      if (days.stream().allMatch(day -> order.find(day).isPresent())) {
        fitting.add(order);
      }
    }
    return fitting;
  }

  /** Whether the value is a different day in each order. */
  public static boolean isAmbiguous(String value) {
    Optional<LocalDate> first = DAY_MONTH_YEAR.find(value);
    Optional<LocalDate> second = MONTH_DAY_YEAR.find(value);
    return first.isPresent() && second.isPresent() && !first.equals(second);
  }

  /** Whether the value is a day in any order. */
  public static boolean isDay(String value) {
    return DAY_MONTH_YEAR.find(value).isPresent() || MONTH_DAY_YEAR.find(value).isPresent();
  }

  private static String withoutWeekday(String text) {
    Matcher word = WEEKDAY.matcher(text);
    return word.find() && WEEKDAYS.contains(plain(word.group(1)))
        ? text.substring(word.end())
        : text;
  }

  private Optional<LocalDate> inNumbers(String text) {
    Matcher numbers = NUMBERS.matcher(text);
    if (!numbers.matches()) {
      return Optional.empty();
    }
    int first = number(numbers.group(1));
    int second = number(numbers.group(3));
    int year = number(numbers.group(4));
    int whole = year < 100 ? 2000 + year : year;
    // With points the day comes first wherever points are used (common practice, no source).
    boolean dayFirst = this == DAY_MONTH_YEAR || numbers.group(2).equals(".");
    return dayFirst ? day(whole, second, first) : day(whole, first, second);
  }

  private static Optional<LocalDate> spelled(String text) {
    Matcher dayFirst = DAY_THEN_MONTH.matcher(text);
    if (dayFirst.matches()) {
      return day(number(dayFirst.group(3)), month(dayFirst.group(2)), number(dayFirst.group(1)));
    }
    Matcher monthFirst = MONTH_THEN_DAY.matcher(text);
    return monthFirst.matches()
        ? day(number(monthFirst.group(3)), month(monthFirst.group(1)), number(monthFirst.group(2)))
        : Optional.empty();
  }

  private static Optional<LocalDate> day(int year, int month, int day) {
    try {
      return Optional.of(LocalDate.of(year, month, day));
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }

  private static int number(String digits) {
    return Integer.parseInt(digits);
  }

  private static int month(String name) {
    String plain = plain(name);
    return MONTHS.getOrDefault(plain, MONTHS.getOrDefault(plain.substring(0, 3), 0));
  }

  private static Map<String, Integer> months() {
    Map<String, Integer> months = new HashMap<>();
    for (Locale locale : LANGUAGES) {
      for (Month month : Month.values()) {
        String name = plain(month.getDisplayName(TextStyle.FULL, locale));
        months.put(name, month.getValue());
        months.putIfAbsent(name.substring(0, 3), month.getValue());
      }
    }
    return months;
  }

  private static Set<String> weekdays() {
    return LANGUAGES.stream()
        .flatMap(
            locale ->
                Stream.of(DayOfWeek.values())
                    .map(day -> day.getDisplayName(TextStyle.FULL, locale)))
        .map(DayOrder::plain)
        .flatMap(name -> Stream.of(name, name.substring(0, 3), name.substring(0, 2)))
        .collect(Collectors.toUnmodifiableSet());
  }

  private static String plain(String name) {
    return Normalizer.normalize(name.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
        .replaceAll("\\p{M}", "");
  }
}
