package vestiary.cluster;

import static vestiary.web.Speech.say;

import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.Term;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Speech;

/**
 * What stands in the fields of the calendar. An option that is left to the calendar is empty in the
 * form, so that another calendar brings its own.
 */
public final class CalendarEntries {

  static final List<String> FIELDS =
      List.of(
          "name", "timeZone", "languages", "calendar", "epiphany", "ascension", "corpusChristi");

  private static final List<String> ZONES =
      ZoneId.getAvailableZoneIds().stream()
          .filter(id -> id.contains("/") && !id.startsWith("Etc/") && !id.startsWith("SystemV/"))
          .sorted()
          .toList();

  private static final Pattern BETWEEN = Pattern.compile("[,;\\s]+");

  private CalendarEntries() {}

  /** Names of time zones, for completion. */
  public static List<String> zones() {
    return ZONES;
  }

  static Entries from(Cluster cluster) {
    CalendarSettings kept = cluster.calendar();
    CalendarSettings usual = CalendarSettings.defaultsOf(kept.calendar());
    return Entries.empty()
        .with("name", cluster.isSetUp() ? cluster.name() : "")
        .with("timeZone", cluster.zone().getId())
        .with("languages", languages(cluster))
        .with("calendar", kept.calendar())
        .with("epiphany", unlessUsual(kept.epiphany(), usual.epiphany()))
        .with("ascension", unlessUsual(kept.ascension(), usual.ascension()))
        .with("corpusChristi", unlessUsual(kept.corpusChristi(), usual.corpusChristi()))
        .with("version", String.valueOf(cluster.version()));
  }

  static CalendarFields fields(Entries entries) {
    return new CalendarFields(
        entries.field("name"),
        entries.field("timeZone"),
        ZONES,
        entries.field("languages"),
        entries.choice("calendar", calendars()),
        entries.choice(
            "epiphany",
            options("date", say("on 6 January"), "sunday", say("on the Sunday nearest to it"))),
        entries.choice(
            "ascension",
            options("thursday", say("on Thursday"), "sunday", say("on the Sunday after it"))),
        entries.choice(
            "corpusChristi",
            options("thursday", say("on Thursday"), "sunday", say("on the Sunday after it"))));
  }

  /** The settings as they were typed; policies that are {@code null} stay as they are. */
  static ChangeSettings.Request request(
      Entries typed, ChangeSettings.PolicyRequest policies, Integer version) {
    return new ChangeSettings.Request(
        typed.text("name"),
        typed.text("calendar"),
        option(typed, "epiphany"),
        option(typed, "ascension"),
        option(typed, "corpusChristi"),
        typed.text("timeZone"),
        languages(typed),
        policies,
        version);
  }

  private static String languages(Cluster cluster) {
    return cluster.languages().stream()
        .map(Locale::toLanguageTag)
        .collect(Collectors.joining(", "));
  }

  private static List<String> languages(Entries typed) {
    return BETWEEN.splitAsStream(typed.text("languages").strip()).distinct().toList();
  }

  /** An option left to the calendar is the one that the chosen calendar begins with. */
  private static String option(Entries typed, String field) {
    String calendar = typed.text("calendar");
    if (!typed.text(field).isBlank() || !isOffered(calendar)) {
      return typed.text(field);
    }
    CalendarSettings usual = CalendarSettings.defaultsOf(calendar);
    return switch (field) {
      case "epiphany" -> usual.epiphany().id();
      case "ascension" -> usual.ascension().id();
      default -> usual.corpusChristi().id();
    };
  }

  private static boolean isOffered(String calendar) {
    return LiturgicalCalendar.offered().stream().anyMatch(o -> o.id().equals(calendar));
  }

  private static String unlessUsual(Term kept, Term usual) {
    return kept.equals(usual) ? "" : kept.id();
  }

  /** The calendars that can be kept, by their ids. */
  public static Stream<Choice.Option> calendars() {
    return LiturgicalCalendar.offered().stream()
        .map(o -> Choice.Option.of(o.id(), o.name().in(Speech.localeOr(Locale.ENGLISH))));
  }

  private static Stream<Choice.Option> options(
      String first, String firstText, String second, String secondText) {
    return Stream.of(
        Choice.Option.of("", say("as this calendar has it")),
        Choice.Option.of(first, firstText),
        Choice.Option.of(second, secondText));
  }
}
