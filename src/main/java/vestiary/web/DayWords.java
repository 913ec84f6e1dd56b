package vestiary.web;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import vestiary.calendar.Celebration;
import vestiary.calendar.Colour;
import vestiary.calendar.Day;
import vestiary.calendar.Rank;
import vestiary.calendar.Season;

/** A day of the calendar in the words of pages. */
public final class DayWords {

  private static final int MOST_RIBBONS = 2;

  private static final Map<Season, String> SEASONS =
      Map.of(
          Season.ADVENT, word("Advent"),
          Season.CHRISTMAS, word("Christmas Time"),
          Season.ORDINARY, word("Ordinary Time"),
          Season.LENT, word("Lent"),
          Season.TRIDUUM, word("Paschal Triduum"),
          Season.EASTER, word("Easter Time"));

  private static final Map<Season, String> WEEKDAYS =
      Map.of(
          Season.ADVENT, word("Advent weekday"),
          Season.CHRISTMAS, word("Christmas weekday"),
          Season.ORDINARY, word("Weekday"),
          Season.LENT, word("Lenten weekday"),
          Season.EASTER, word("Easter weekday"));

  private static final Map<Rank, String> RANKS =
      Map.of(
          Rank.SOLEMNITY, word("Solemnity"),
          Rank.FEAST_OF_THE_LORD, word("Feast"),
          Rank.FEAST, word("Feast"),
          Rank.MEMORIAL, word("Memorial"),
          Rank.OPTIONAL_MEMORIAL, word("Optional memorial"),
          Rank.COMMEMORATION, word("Commemoration"));

  private DayWords() {}

  /** For example "Advent, first week". */
  public static String season(Day day) {
    String season = say(SEASONS.get(day.season()));
    return day.week() == 0 ? season : say("%s, %s week", season, Speech.ordinal(day.week()));
  }

  /** For example "Sunday B, weekdays II"; the two differ in the week before Advent. */
  public static String cycles(Day weekday, Day sunday) {
    return say("Sunday %s, weekdays %s", sunday.sundayCycle(), weekday.weekdayCycle());
  }

  /** For example "Advent, first week · Sunday B, weekdays I · psalter week I". */
  public static String placeInTheYear(Day day) {
    return say(
        "%s · %s · psalter week %s",
        season(day), cycles(day, day), say("I II III IV").split(" ")[day.psalterWeek() - 1]);
  }

  public static Celebrated celebrated(String lead, Celebration celebration, Locale locale) {
    return new Celebrated(
        lead,
        celebration.rank().id(),
        say(RANKS.getOrDefault(celebration.rank(), "")),
        celebration.name().in(locale));
  }

  /** The same in a narrow column, where a weekday need not say its week again. */
  public static Celebrated tight(String lead, Celebration celebration, Day day, Locale locale) {
    Celebrated whole = celebrated(lead, celebration, locale);
    if (isPlainWeekday(celebration)) {
      String name = say(WEEKDAYS.getOrDefault(day.season(), whole.name()));
      return new Celebrated(lead, whole.rank(), "", name);
    }
    return celebration.rank() == Rank.OPTIONAL_MEMORIAL
        ? new Celebrated(lead, whole.rank(), whole.rankWord(), withoutTitles(whole.name()))
        : whole;
  }

  /** The name alone: "Saint Clement I" for "Saint Clement I, Pope and Martyr". */
  private static String withoutTitles(String name) {
    return name.contains(",") ? name.substring(0, name.indexOf(',')) : name;
  }

  /** What is kept, what else may be, and the evening. */
  public static List<Celebrated> column(Day day, Day next, Locale locale) {
    List<Celebrated> lines = new ArrayList<>();
    lines.add(tight("", day.kept(), day, locale));
    day.celebrations().stream()
        .skip(1)
        .map(c -> tight(say("or"), c, day, locale))
        .forEach(lines::add);
    if (day.evening().tomorrow()) {
      lines.add(tight(say("evening:"), next.kept(), next, locale));
    }
    return lines;
  }

  /** Every colour that some lawful choice of the day brings, the kept celebration's first. */
  public static List<Colour> colours(Day day) {
    return day.celebrations().stream().flatMap(c -> c.colours().stream()).distinct().toList();
  }

  /** The ribbons that hang from a day, for which there is room for two. */
  public static List<Colour> ribbons(Day day) {
    return colours(day).stream().limit(MOST_RIBBONS).toList();
  }

  public static Ribbon ribbon(Colour colour) {
    return new Ribbon(colour, Speech.colour(colour));
  }

  private static boolean isPlainWeekday(Celebration celebration) {
    return celebration.rank() == Rank.FERIA && celebration.id().contains("-week-");
  }
}
