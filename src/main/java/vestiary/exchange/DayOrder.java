package vestiary.exchange;

import java.text.Normalizer;
import java.time.DateTimeException;
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
import vestiary.calendar.Term;
import vestiary.web.Speech;

/** In which order the days of a file are written where they are no ISO 8601 dates. */
enum DayOrder implements Term {
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

  /** Before a date: the day of the week, in words or short. */
  private static final Pattern WEEKDAY =
      Pattern.compile("^\\p{L}{2,12}[.,]*\\s+(?=\\d|\\p{L}+\\.?\\s+\\d)");

  /** By the whole name and its first three letters, without accents, in three languages (CLDR). */
  private static final Map<String, Integer> MONTHS = months();

  private final String words;

  DayOrder(String words) {
    this.words = words;
  }

  /** For people, with an example. */
  String words() {
    return words;
  }

  /** The day that a cell names in this order; empty if it names none. */
  Optional<LocalDate> find(String cell) {
    String text = cell.strip();
    Matcher iso = ISO.matcher(text);
    if (iso.matches()) {
      return day(number(iso.group(1)), number(iso.group(2)), number(iso.group(3)));
    }
    String bare = WEEKDAY.matcher(text).replaceFirst("");
    Optional<LocalDate> spelled = spelled(text).or(() -> spelled(bare));
    return spelled.isPresent() ? spelled : inNumbers(bare);
  }

  /** Orders in which every value that is a day at all is one; both where that tells nothing. */
  static Set<DayOrder> fitting(Collection<String> values) {
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
  static boolean isAmbiguous(String value) {
    Optional<LocalDate> first = DAY_MONTH_YEAR.find(value);
    Optional<LocalDate> second = MONTH_DAY_YEAR.find(value);
    return first.isPresent() && second.isPresent() && !first.equals(second);
  }

  /** Whether the value is a day in any order. */
  static boolean isDay(String value) {
    return DAY_MONTH_YEAR.find(value).isPresent() || MONTH_DAY_YEAR.find(value).isPresent();
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
    for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN, Locale.forLanguageTag("es"))) {
      for (Month month : Month.values()) {
        String name = plain(month.getDisplayName(TextStyle.FULL, locale));
        months.put(name, month.getValue());
        months.putIfAbsent(name.substring(0, 3), month.getValue());
      }
    }
    return months;
  }

  private static String plain(String name) {
    return Normalizer.normalize(name.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
        .replaceAll("\\p{M}", "");
  }
}
