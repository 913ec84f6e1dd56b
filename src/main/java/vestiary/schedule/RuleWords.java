package vestiary.schedule;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.time.DayOfWeek;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import vestiary.web.Speech;

/**
 * A rule of RFC 5545 as the form has it: weekdays, every week or every other, or some of a month.
 *
 * @param weekdays as the rule writes them, from Monday
 * @param turns of the month, 1 to 5, and -1 for the last; empty for every week
 * @param everyOther every other week only, counted from the first date
 */
record RuleWords(List<String> weekdays, Set<Integer> turns, boolean everyOther) {

  static final List<String> WEEK = List.of("MO", "TU", "WE", "TH", "FR", "SA", "SU");

  private static final List<String> TURNS =
      List.of("", word("first"), word("second"), word("third"), word("fourth"), word("fifth"));

  private static final String LAST = word("last");

  /** What the form can show of a rule; empty if it says something that the form does not ask. */
  static Optional<RuleWords> find(String rrule) {
    Map<String, String> parts = parts(rrule);
    String days = parts.remove("BYDAY");
    String frequency = parts.remove("FREQ");
    boolean everyOther = "2".equals(parts.remove("INTERVAL")) && "WEEKLY".equals(frequency);
    if (days == null || rrule.contains("INTERVAL") && !everyOther || !parts.isEmpty()) {
      return Optional.empty();
    }
    return switch (frequency == null ? "" : frequency) {
      case "WEEKLY" -> Optional.of(new RuleWords(inOrder(days), Set.of(), everyOther));
      case "MONTHLY" -> monthly(days);
      default -> Optional.empty();
    };
  }

  /** The rule that says so; empty if no weekday is named. */
  String toRule() {
    if (weekdays.isEmpty()) {
      return "";
    }
    if (turns.isEmpty()) {
      return "FREQ=WEEKLY;%sBYDAY=%s"
          .formatted(everyOther ? "INTERVAL=2;" : "", String.join(",", weekdays));
    }
    return "FREQ=MONTHLY;BYDAY="
        + turns.stream()
            .flatMap(turn -> weekdays.stream().map(day -> turn + day))
            .collect(Collectors.joining(","));
  }

  /** For example "Sundays", "first Fridays", "every other Saturday", "every day". */
  String words() {
    List<String> names = weekdays.stream().map(RuleWords::weekday).toList();
    if (!turns.isEmpty()) {
      String which =
          Speech.list(turns.stream().map(t -> say(t < 0 ? LAST : TURNS.get(t))).toList());
      return say("%s %s of the month", which, Speech.list(plural()));
    }
    if (everyOther) {
      return say("every other %s", Speech.list(names));
    }
    if (weekdays.size() == WEEK.size()) {
      return say("every day");
    }
    return weekdays.equals(WEEK.subList(0, 5)) || weekdays.equals(WEEK.subList(0, 6))
        ? say("%ss to %ss", names.get(0), names.get(names.size() - 1))
        : Speech.list(plural());
  }

  private List<String> plural() {
    return weekdays.stream().map(RuleWords::dayOfWeek).map(Speech::weekdays).toList();
  }

  private static DayOfWeek dayOfWeek(String day) {
    return DayOfWeek.of(WEEK.indexOf(day) + 1);
  }

  static String weekday(String day) {
    return dayOfWeek(day).getDisplayName(TextStyle.FULL, Speech.localeOr(Locale.ENGLISH));
  }

  static String month(int month) {
    return Month.of(month).getDisplayName(TextStyle.FULL, Speech.localeOr(Locale.ENGLISH));
  }

  /** Only where every turn is that of every weekday, since the form ticks both apart. */
  private static Optional<RuleWords> monthly(String days) {
    Set<String> named = new LinkedHashSet<>();
    Set<Integer> turns = new TreeSet<>();
    List<String> all = Arrays.asList(days.split(","));
    for (String day : all) {
      if (!day.matches("([1-5]|-1)[A-Z]{2}")) {
        return Optional.empty();
      }
      turns.add(Integer.valueOf(day.substring(0, day.length() - 2)));
      named.add(day.substring(day.length() - 2));
    }
    // The last of the month is said last.
    Set<Integer> ordered = new LinkedHashSet<>(turns.stream().filter(turn -> turn > 0).toList());
    ordered.addAll(turns);
    return all.size() == turns.size() * named.size()
        ? Optional.of(new RuleWords(inOrder(String.join(",", named)), ordered, false))
        : Optional.empty();
  }

  private static List<String> inOrder(String days) {
    List<String> named = Arrays.asList(days.split(","));
    return WEEK.stream().filter(named::contains).toList();
  }

  private static Map<String, String> parts(String rrule) {
    return Arrays.stream(rrule.split(";"))
        .map(part -> part.split("=", 2))
        .filter(part -> part.length == 2 && !part[0].equals("WKST"))
        .collect(
            Collectors.toMap(part -> part[0], part -> part[1], (a, b) -> a, LinkedHashMap::new));
  }
}
