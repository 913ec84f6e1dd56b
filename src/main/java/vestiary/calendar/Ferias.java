package vestiary.calendar;

import java.time.DayOfWeek;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The days that no table lists: weekdays, and the Sundays of Ordinary Time. Their ids follow one
 * pattern ({@code monday-week-3-lent}, {@code december-17}, {@code
 * twelfth-sunday-in-ordinary-time}). The same day of the same week is one object in every year.
 */
final class Ferias {

  private static final Celebration[][] ADVENT = weeks(4, Ferias::adventWeekday);
  private static final Celebration[][] LENT = weeks(6, Ferias::lentWeekday);
  private static final Celebration[][] EASTER = weeks(7, Ferias::easterWeekday);
  private static final Celebration[][] ORDINARY = weeks(34, Ferias::ordinaryDay);
  private static final Celebration[] DECEMBER = december();
  private static final Celebration[] JANUARY = january();

  private Ferias() {}

  static Celebration advent(int week, DayOfWeek weekday) {
    return ADVENT[week][weekday.ordinal()];
  }

  /** Week 0 is that of Ash Wednesday. */
  static Celebration lent(int week, DayOfWeek weekday) {
    return LENT[week][weekday.ordinal()];
  }

  static Celebration easter(int week, DayOfWeek weekday) {
    return EASTER[week][weekday.ordinal()];
  }

  /** Any day of Ordinary Time, Sundays included. */
  static Celebration ordinary(int week, DayOfWeek weekday) {
    return ORDINARY[week][weekday.ordinal()];
  }

  /** 17 to 24 December, and 26 to 31 December within the octave. */
  static Celebration december(int day) {
    return DECEMBER[day];
  }

  /** 2 to 13 January, before the Baptism of the Lord. */
  static Celebration january(int day) {
    return JANUARY[day];
  }

  private static Celebration adventWeekday(int week, DayOfWeek weekday) {
    LocalName name = FeriaNames.advent(week, weekday);
    return feria(id(week, weekday, "advent"), name, Precedence.ADVENT_WEEKDAY, Kind.ADVENT);
  }

  private static Celebration lentWeekday(int week, DayOfWeek weekday) {
    LocalName name = FeriaNames.lent(week, weekday);
    String id = week == 0 ? id(name) : id(week, weekday, "lent");
    return feria(id, name, Precedence.LENT_WEEKDAY, Kind.LENT);
  }

  private static Celebration easterWeekday(int week, DayOfWeek weekday) {
    LocalName name = FeriaNames.easter(week, weekday);
    return feria(id(week, weekday, "easter"), name, Precedence.EASTER_WEEKDAY, Kind.EASTER);
  }

  private static Celebration ordinaryDay(int week, DayOfWeek weekday) {
    LocalName name = FeriaNames.ordinary(week, weekday);
    return weekday == DayOfWeek.SUNDAY
        ? celebration(id(name), name, Rank.SUNDAY, Precedence.SUNDAY, Kind.ORDINARY)
        : feria(
            id(week, weekday, "ordinary-time"), name, Precedence.ORDINARY_WEEKDAY, Kind.ORDINARY);
  }

  private static Celebration[] december() {
    Celebration[] days = new Celebration[32];
    for (int day = 17; day <= 24; day++) {
      LocalName name = FeriaNames.lateAdvent(day);
      days[day] = feria("december-" + day, name, Precedence.LATE_ADVENT_WEEKDAY, Kind.ADVENT);
    }
    for (int day = 26; day <= 31; day++) {
      LocalName name = FeriaNames.christmasOctave(day - 24);
      days[day] = feria("december-" + day, name, Precedence.CHRISTMAS_OCTAVE, Kind.CHRISTMAS);
    }
    return days;
  }

  private static Celebration[] january() {
    Celebration[] days = new Celebration[14];
    for (int day = 2; day < days.length; day++) {
      LocalName name = FeriaNames.christmasTime(day);
      days[day] = feria("january-" + day, name, Precedence.CHRISTMAS_WEEKDAY, Kind.CHRISTMAS);
    }
    return days;
  }

  private static String id(int week, DayOfWeek weekday, String season) {
    return weekday.name().toLowerCase(Locale.ROOT) + "-week-" + week + "-" + season;
  }

  private static String id(LocalName name) {
    return name.english().toLowerCase(Locale.ROOT).replace(' ', '-');
  }

  private static Celebration feria(String id, LocalName name, Precedence precedence, Kind season) {
    return celebration(id, name, Rank.FERIA, precedence, season);
  }

  private static Celebration celebration(
      String id, LocalName name, Rank rank, Precedence precedence, Kind season) {
    List<Colour> colours = List.of(SeasonColours.of(season));
    String source = "General Roman Calendar; " + precedence.source();
    Reason why = ColourReasons.of(colours, Set.of(season), name);
    return new Celebration(id, name, rank, precedence, colours, source, why);
  }

  private static Celebration[][] weeks(int last, WeekdayOf day) {
    Celebration[][] weeks = new Celebration[last + 1][7];
    for (int week = 0; week <= last; week++) {
      for (DayOfWeek weekday : DayOfWeek.values()) {
        weeks[week][weekday.ordinal()] = day.of(week, weekday);
      }
    }
    return weeks;
  }

  @FunctionalInterface
  private interface WeekdayOf {
    Celebration of(int week, DayOfWeek weekday);
  }
}
