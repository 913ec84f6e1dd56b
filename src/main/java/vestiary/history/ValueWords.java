package vestiary.history;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import vestiary.calendar.Term;
import vestiary.planning.RoleWords;
import vestiary.vesting.Role;
import vestiary.web.Speech;

/**
 * Says what a row kept as its reader would say it: dates by the calendar, hours by the cluster's
 * clock, ids by the names they have now.
 *
 * @param names by id
 * @param terms what else is kept otherwise than people say it
 */
record ValueWords(ZoneId zone, Map<String, String> names, TermWords terms) {

  private static final Map<String, String> OF_OWNERS =
      Map.of(
          "freely", Speech.word("freely"),
          "asking", Speech.word("on asking"),
          "never", Speech.word("never"));

  private static final String GONE = Speech.word("one that is gone");

  private static final Pattern MOMENT = Pattern.compile("\\d{4,}-\\d\\d-\\d\\dT\\d\\d:\\d\\d.*");
  private static final Pattern DATE = Pattern.compile("\\d{4}-\\d\\d-\\d\\d");
  private static final Pattern TIME = Pattern.compile("\\d\\d:\\d\\d:\\d\\d");
  private static final Pattern ID = Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");
  private static final Pattern WEEKLY = Pattern.compile("FREQ=WEEKLY;BYDAY=([A-Z,]+)");

  private static final List<String> WEEK = List.of("MO", "TU", "WE", "TH", "FR", "SA", "SU");

  /** Empty for nothing. */
  String say(String kind, String column, Object value) {
    if (value instanceof Collection<?> several) {
      return several.stream()
          .map(one -> say(kind, column, one))
          .filter(said -> !said.isEmpty())
          .collect(Collectors.joining(", "));
    }
    if (value instanceof Map<?, ?> parts && parts.get("count") instanceof Number number) {
      return counted(number.intValue(), parts);
    }
    if (value instanceof Map<?, ?> parts) {
      return parts.entrySet().stream()
          .filter(part -> part.getValue() != null)
          .map(part -> "%s %s".formatted(part.getKey(), say(kind, column, part.getValue())).strip())
          .collect(Collectors.joining(" "));
    }
    if (value instanceof Boolean is) {
      return is ? Speech.say("yes") : Speech.say("no");
    }
    return value == null ? "" : text(kind, column, value.toString());
  }

  /**
   * Who brings his own or vests besides the clergy, for example "two concelebrants (chasuble,
   * stole)".
   */
  private String counted(int number, Map<?, ?> parts) {
    Object who = parts.containsKey("role") ? parts.get("role") : parts.get("kind");
    String wearers =
        Term.find(Role.class, String.valueOf(who))
            .map(role -> Speech.count(number, RoleWords.noun(role)))
            .orElseGet(() -> "%d %s".formatted(number, who));
    String more =
        parts.containsKey("kinds")
            ? say("piece", "kind", parts.get("kinds"))
            : say("piece", "size", parts.get("sizes"));
    return more.isEmpty() ? wearers : "%s (%s)".formatted(wearers, more);
  }

  /** For example "8 December 2026, 18:30". */
  static String moment(ZonedDateTime at) {
    return "%s, %s".formatted(Speech.dateAndYear(at.toLocalDate()), Speech.clock(at));
  }

  private String text(String kind, String column, String said) {
    if (ID.matcher(said).matches()) {
      return names.getOrDefault(said, Speech.say(GONE));
    }
    try {
      return findTime(said).orElseGet(() -> word(kind, column, said));
    } catch (DateTimeException typed) {
      // Whoever types 2026-02-31 into a note means nothing by it that we could say better.
      return said;
    }
  }

  private Optional<String> findTime(String said) {
    if (MOMENT.matcher(said).matches()) {
      return Optional.of(moment(OffsetDateTime.parse(said).atZoneSameInstant(zone)));
    }
    if (DATE.matcher(said).matches()) {
      return Optional.of(Speech.dateAndYear(LocalDate.parse(said)));
    }
    return TIME.matcher(said).matches()
        ? Optional.of(LocalTime.parse(said).withSecond(0).toString())
        : Optional.empty();
  }

  private String word(String kind, String column, String said) {
    if (column.equals("rrule")) {
      return findWeekly(said).orElse(said);
    }
    if (column.equals("owner_policy")) {
      return Speech.say(OF_OWNERS.getOrDefault(said, said));
    }
    return terms.say(kind, column, said);
  }

  private static Optional<String> findWeekly(String rule) {
    Matcher weekly = WEEKLY.matcher(rule);
    if (!weekly.matches()) {
      return Optional.empty();
    }
    List<String> days = Arrays.stream(weekly.group(1).split(",")).map(ValueWords::weekday).toList();
    return Optional.of(Speech.say("every %s", Speech.list(days)));
  }

  private static String weekday(String day) {
    return DayOfWeek.of(WEEK.indexOf(day) + 1)
        .getDisplayName(TextStyle.FULL, Speech.localeOr(Locale.ENGLISH));
  }
}
