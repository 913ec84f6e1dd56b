package vestiary.calendar;

import java.time.DayOfWeek;

/**
 * The season, the week and the day of the season itself for every day of a year, before any other
 * celebration is laid over them.
 *
 * <p>In 2026 the sixth week of Ordinary Time breaks off before Ash Wednesday (18 February) and the
 * eighth begins after Pentecost (25 May), since the last week is always the 34th. Source: UNLY 18
 * to 44.
 */
final class TemporalCycle {

  private final YearOutline year;
  private final Entry[] listed;

  /**
   * @param listed by day of the year, the day of the season that a table lists, or null
   */
  TemporalCycle(YearOutline year, Entry[] listed) {
    this.year = year;
    this.listed = listed;
  }

  Season season(int day) {
    if (day <= year.baptism() || day >= year.christmas()) return Season.CHRISTMAS;
    if (day >= year.advent()) return Season.ADVENT;
    if (day < year.ashWednesday() || day > year.pentecost()) return Season.ORDINARY;
    if (day >= year.easter()) return Season.EASTER;
    return day >= year.easter() - 2 ? Season.TRIDUUM : Season.LENT;
  }

  /** The week of the season; 0 in Christmas Time and from Ash Wednesday to the Saturday after. */
  int week(int day) {
    return switch (season(day)) {
      case CHRISTMAS -> 0;
      case ADVENT -> weeksFrom(year.advent(), day);
      case LENT, TRIDUUM -> weeksFrom(year.easter() - 42, day);
      case EASTER -> weeksFrom(year.easter(), day);
      case ORDINARY -> ordinaryWeek(day);
    };
  }

  /**
   * The week of the psalter, 1 to 4; in the octaves, which have psalms of their own, that of their
   * first day. Source: General Instruction of the Liturgy of the Hours 133; the weeks of Christmas
   * Time from memory.
   */
  int psalterWeek(int day) {
    return switch (season(day)) {
      case CHRISTMAS -> day == year.baptism() ? 1 : Math.min(2, sundaysSinceChristmas(day));
      case ORDINARY, ADVENT, EASTER -> (week(day) - 1) % 4 + 1;
      case LENT, TRIDUUM -> (week(day) + 3) % 4 + 1;
    };
  }

  /** Sundays after 25 December up to this day, at least one. */
  private int sundaysSinceChristmas(int day) {
    if (day >= year.christmas()) return 1;
    int sunday = year.sundayUpTo(day);
    return sunday >= 2 ? 2 : 1;
  }

  /** The year the liturgical year is named by: the one in which most of it falls. */
  int liturgicalYear(int day) {
    return day >= year.advent() ? year.year() + 1 : year.year();
  }

  /** The day of the season, or null on the few days that a fixed celebration always takes. */
  Celebration day(int day) {
    if (listed[day] != null) return listed[day].celebration();
    DayOfWeek weekday = year.weekday(day);
    return switch (season(day)) {
      case CHRISTMAS -> christmas(day);
      case ADVENT -> advent(day, weekday);
      case LENT, TRIDUUM -> Ferias.lent(week(day), weekday);
      case EASTER -> weekday == DayOfWeek.SUNDAY ? null : Ferias.easter(week(day), weekday);
      case ORDINARY -> Ferias.ordinary(week(day), weekday);
    };
  }

  private Celebration advent(int day, DayOfWeek weekday) {
    int dayOfDecember = 25 - (year.christmas() - day);
    return dayOfDecember >= 17 ? Ferias.december(dayOfDecember) : Ferias.advent(week(day), weekday);
  }

  private Celebration christmas(int day) {
    if (day == 1 || day == year.christmas()) return null;
    if (day > year.christmas()) return Ferias.december(25 + day - year.christmas());
    return day == year.baptism() ? null : Ferias.january(day);
  }

  /** Counted forwards until Lent, backwards from the 34th week after it. */
  private int ordinaryWeek(int day) {
    if (day < year.ashWednesday()) {
      return (day - year.sundayUpTo(year.baptism())) / 7 + 1;
    }
    return 34 - (year.advent() - 7 - year.sundayUpTo(day)) / 7;
  }

  private static int weeksFrom(int firstSunday, int day) {
    return Math.floorDiv(day - firstSunday, 7) + 1;
  }
}
