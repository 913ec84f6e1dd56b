package vestiary.schedule;

import static vestiary.web.Speech.say;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.pattern.LiturgicalDays;
import vestiary.problem.Asked;
import vestiary.problem.TypedDates;
import vestiary.web.Entries;
import vestiary.web.Speech;

/**
 * What stands in the form of a pattern: what is stored becomes entries, what was typed a request.
 */
final class PatternEntries {

  /** Ticked weekdays say which days. */
  static final String WEEKDAYS = "weekdays";

  /** A rule of RFC 5545 says which days. */
  static final String RULE = "rule";

  static final List<String> FIELDS =
      List.of(
          "church",
          "days",
          "weekday",
          "rrule",
          "starts",
          "until",
          "time",
          "minutes",
          "seasons",
          "months",
          "school",
          "except",
          "mass",
          "celebrant",
          "concelebrants",
          "deacons",
          "note",
          "language",
          "from");

  private static final String YES = "true";

  private PatternEntries() {}

  /** A new pattern: Sundays, as most are; not in the Triduum, as nearly all are. */
  static Entries fresh(String today) {
    return Entries.empty()
        .with("days", WEEKDAYS)
        .with("starts", today)
        .with("minutes", "60")
        .with("notInTriduum", YES);
  }

  static Entries from(PatternRow row, String church, String celebrant) {
    Optional<RuleWords> rule = RuleWords.find(row.rrule);
    Entries entries =
        Entries.empty()
            .with("church", church)
            .with("days", row.days.isEmpty() ? rule.map(r -> WEEKDAYS).orElse(RULE) : row.days)
            .with("rrule", rule.isPresent() ? "" : row.rrule)
            .with("starts", row.starts.toString())
            .with("until", row.ends == null ? "" : row.ends.toString())
            .with("time", row.at.toString())
            .with("minutes", String.valueOf(row.minutes))
            .with("seasons", row.seasons)
            .with("months", Stream.of(row.months).map(String::valueOf).toArray(String[]::new))
            .with("notInTriduum", String.valueOf(row.notInTriduum))
            .with("notOnHolyDays", String.valueOf(row.notOnHolyDays))
            .with("school", row.school)
            .with(
                "except",
                Stream.of(row.except).map(Speech::dateAndYear).collect(Collectors.joining(", ")))
            .with("mass", row.kind)
            .with("celebrant", celebrant)
            .with("concelebrants", String.valueOf(row.concelebrants))
            .with("deacons", String.valueOf(row.deacons))
            .with("note", row.note)
            .with("language", row.language)
            .with("version", String.valueOf(row.version));
    return rule.map(words -> with(entries, words)).orElse(entries);
  }

  private static Entries with(Entries entries, RuleWords words) {
    return entries
        .with("weekday", words.weekdays().toArray(String[]::new))
        .with("turn", words.turns().stream().map(String::valueOf).toArray(String[]::new))
        .with("everyOther", String.valueOf(words.everyOther()));
  }

  /**
   * The request that the API would send; what is no number is noted as a fault.
   *
   * @param ministers who else vests, which this form does not ask
   */
  static SavePattern.Request request(Entries typed, List<MinistersValue> ministers, Asked asked) {
    String days = typed.text("days");
    boolean liturgical = !days.equals(WEEKDAYS) && !days.equals(RULE);
    return new SavePattern.Request(
        typed.text("church"),
        liturgical ? "" : rule(typed, asked),
        typed.text("starts"),
        typed.text("time"),
        asked.number("minutes", typed.text("minutes")),
        typed.text("mass"),
        typed.text("celebrant"),
        asked.number("concelebrants", typed.text("concelebrants")),
        asked.number("deacons", typed.text("deacons")),
        ministers,
        typed.text("note"),
        typed.text("language"),
        new SavePattern.Bounds(
            liturgical ? days : "",
            typed.text("until"),
            typed.all("seasons"),
            typed.all("months").stream().map(m -> asked.number("months", m)).toList(),
            typed.isTicked("notInTriduum"),
            typed.isTicked("notOnHolyDays"),
            typed.text("school"),
            except(typed, asked)));
  }

  private static String rule(Entries typed, Asked asked) {
    if (typed.text("days").equals(RULE)) {
      return typed.text("rrule");
    }
    List<String> weekdays = RuleWords.WEEK.stream().filter(typed.all("weekday")::contains).toList();
    if (weekdays.isEmpty()) {
      asked.fault("weekday", say("Tick at least one day of the week."));
      return "FREQ=DAILY";
    }
    return new RuleWords(weekdays, turns(typed), typed.isTicked("everyOther")).toRule();
  }

  private static Set<Integer> turns(Entries typed) {
    return Stream.of("1", "2", "3", "4", "5", "-1")
        .filter(typed.all("turn")::contains)
        .map(Integer::valueOf)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static List<String> except(Entries typed, Asked asked) {
    return TypedDates.read("except", typed.text("except"), asked).stream()
        .map(LocalDate::toString)
        .toList();
  }

  /** The form's names of fields that the API names otherwise. */
  static Map<String, String> names(Entries typed) {
    boolean ticked = typed.text("days").equals(WEEKDAYS);
    return ticked ? Map.of("rrule", "weekday", "days", "weekday") : Map.of();
  }

  /** What the form offers for the days that are none of the week. */
  static List<LiturgicalDays> liturgical() {
    return List.of(LiturgicalDays.values());
  }
}
