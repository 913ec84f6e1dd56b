package vestiary.calendar;

import static vestiary.calendar.OrdinalNames.english;
import static vestiary.calendar.OrdinalNames.latin;
import static vestiary.calendar.OrdinalNames.roman;
import static vestiary.calendar.OrdinalNames.spanish;

import java.time.DayOfWeek;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The days that no table lists: weekdays, and the Sundays of Ordinary Time. Their ids follow one
 * pattern ({@code monday-week-3-lent}, {@code december-17}, {@code
 * twelfth-sunday-in-ordinary-time}).
 *
 * <p>The same day of the same week is one object in every year. Names in the three languages are
 * from memory of the books.
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

  static Celebration ordinary(int week, DayOfWeek weekday) {
    return ORDINARY[week][weekday.ordinal()];
  }

  /** 17 to 24 December, and 26 to 31 December within the octave. */
  static Celebration december(int day) {
    return DECEMBER[day];
  }

  /** 2 to 12 January, before the Baptism of the Lord. */
  static Celebration january(int day) {
    return JANUARY[day];
  }

  private static Celebration adventWeekday(int week, DayOfWeek weekday) {
    LocalName name = inWeek(week, weekday, "of Advent", "Adventus", "de Adviento");
    return feria(id(week, weekday, "advent"), name, Precedence.ADVENT_WEEKDAY, Kind.ADVENT);
  }

  private static Celebration lentWeekday(int week, DayOfWeek weekday) {
    LocalName name = inWeek(week, weekday, "of Lent", "Quadragesimae", "de Cuaresma");
    String id = id(week, weekday, "lent");
    if (week == 0) {
      name =
          new LocalName(
              english(weekday) + " after Ash Wednesday",
              latin(weekday) + " post Cineres",
              spanish(weekday) + " después de Ceniza");
      id = english(weekday).toLowerCase(Locale.ROOT) + "-after-ash-wednesday";
    }
    return feria(id, name, Precedence.LENT_WEEKDAY, Kind.LENT);
  }

  private static Celebration easterWeekday(int week, DayOfWeek weekday) {
    LocalName name = inWeek(week, weekday, "of Easter", "Paschae", "de Pascua");
    return feria(id(week, weekday, "easter"), name, Precedence.EASTER_WEEKDAY, Kind.EASTER);
  }

  private static Celebration ordinaryDay(int week, DayOfWeek weekday) {
    if (weekday == DayOfWeek.SUNDAY) return ordinarySunday(week);
    LocalName name = inWeek(week, weekday, "in Ordinary Time", "per annum", "del Tiempo Ordinario");
    return feria(
        id(week, weekday, "ordinary-time"), name, Precedence.ORDINARY_WEEKDAY, Kind.ORDINARY);
  }

  private static Celebration ordinarySunday(int week) {
    LocalName name =
        new LocalName(
            english(week) + " Sunday in Ordinary Time",
            "Dominica " + roman(week) + " per annum",
            "Domingo " + roman(week) + " del Tiempo Ordinario");
    String id = name.english().toLowerCase(Locale.ROOT).replace(' ', '-');
    return celebration(id, name, Rank.SUNDAY, Precedence.SUNDAY, Kind.ORDINARY);
  }

  private static Celebration[] december() {
    Celebration[] days = new Celebration[32];
    for (int day = 17; day <= 24; day++) days[day] = lateAdvent(day);
    for (int day = 26; day <= 31; day++) days[day] = christmasOctave(day);
    return days;
  }

  private static Celebration lateAdvent(int day) {
    LocalName name =
        new LocalName(
            "Weekday of Advent, " + day + " December",
            "Feria Adventus, die " + day + " decembris",
            "Feria de Adviento, " + day + " de diciembre");
    return feria("december-" + day, name, Precedence.LATE_ADVENT_WEEKDAY, Kind.ADVENT);
  }

  private static Celebration christmasOctave(int day) {
    String dayOfOctave = roman(day - 24);
    LocalName name =
        new LocalName(
            english(day - 24) + " Day within the Octave of Christmas",
            "De die " + dayOfOctave + " infra octavam Nativitatis",
            "Día " + dayOfOctave + " dentro de la octava de Navidad");
    return feria("december-" + day, name, Precedence.CHRISTMAS_OCTAVE, Kind.CHRISTMAS);
  }

  private static Celebration[] january() {
    Celebration[] days = new Celebration[14];
    for (int day = 2; day < days.length; day++) days[day] = christmasWeekday(day);
    return days;
  }

  private static Celebration christmasWeekday(int day) {
    LocalName name =
        new LocalName(
            "Weekday of Christmas Time, " + day + " January",
            "Feria temporis Nativitatis, die " + day + " ianuarii",
            "Feria del tiempo de Navidad, " + day + " de enero");
    return feria("january-" + day, name, Precedence.CHRISTMAS_WEEKDAY, Kind.CHRISTMAS);
  }

  private static LocalName inWeek(
      int week, DayOfWeek weekday, String english, String latin, String spanish) {
    return new LocalName(
        english(weekday) + " of the " + english(week) + " Week " + english,
        latin(weekday) + ", hebdomada " + roman(week) + " " + latin,
        spanish(weekday) + " de la " + roman(week) + " semana " + spanish);
  }

  private static String id(int week, DayOfWeek weekday, String season) {
    return english(weekday).toLowerCase(Locale.ROOT) + "-week-" + week + "-" + season;
  }

  private static Celebration feria(String id, LocalName name, Precedence precedence, Kind season) {
    return celebration(id, name, Rank.FERIA, precedence, season);
  }

  private static Celebration celebration(
      String id, LocalName name, Rank rank, Precedence precedence, Kind season) {
    List<Colour> colours = List.of(SeasonColours.of(season));
    String source = "General Roman Calendar; " + precedence.source();
    String why = ColourReasons.of(colours, Set.of(season), name);
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
