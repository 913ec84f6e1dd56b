package vestiary.pattern;

import java.time.LocalDate;
import java.time.Month;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import vestiary.calendar.Day;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.Season;

/**
 * What keeps a pattern from some of its days. A day must pass every limit.
 *
 * @param seasons those it keeps to, as Advent for Masses at dawn; empty for all
 * @param months those it keeps to, as July and August; empty for all
 * @param notInTriduum none from Thursday of the Lord's Supper to Holy Saturday, whose liturgies are
 *     celebrated once and are entered by hand. Easter Sunday has its Masses. Source: Roman Missal,
 *     Thursday of the Lord's Supper 1 to 3, Good Friday 1, Holy Saturday 1 (from memory)
 * @param notOnHolyDays none on a holy day of obligation that is no Sunday, which has its own hours
 *     (common practice, no source)
 * @param school whether it keeps to school terms
 */
public record Limits(
    Set<Season> seasons,
    Set<Month> months,
    boolean notInTriduum,
    boolean notOnHolyDays,
    SchoolTime school) {

  public static final Limits NONE = new Limits(Set.of(), Set.of(), false, false, SchoolTime.ALWAYS);

  public Limits {
    // In the order of the year, whatever order they were named in.
    seasons = seasons.isEmpty() ? Set.of() : EnumSet.copyOf(seasons);
    months = months.isEmpty() ? Set.of() : EnumSet.copyOf(months);
  }

  /** Whether anything is limited. */
  public boolean isNone() {
    return equals(NONE);
  }

  boolean allow(LocalDate date, LiturgicalCalendar calendar, List<SchoolTerm> terms) {
    return (months.isEmpty() || months.contains(date.getMonth()))
        && school.allows(date, terms)
        && (!needCalendar() || allow(calendar.day(date), calendar));
  }

  private boolean needCalendar() {
    return !seasons.isEmpty() || notInTriduum || notOnHolyDays;
  }

  private boolean allow(Day day, LiturgicalCalendar calendar) {
    return (seasons.isEmpty() || seasons.contains(day.season()))
        && !(notInTriduum && isInTriduum(day, calendar))
        && !(notOnHolyDays && LiturgicalDays.isHolyDay(day));
  }

  /**
   * The Triduum begins on Thursday evening, so Thursday itself is still a day of Lent (UNLY 19).
   */
  private static boolean isInTriduum(Day day, LiturgicalCalendar calendar) {
    return day.season() == Season.TRIDUUM
        || day.season() == Season.LENT
            && calendar.day(day.date().plusDays(1)).season() == Season.TRIDUUM;
  }
}
