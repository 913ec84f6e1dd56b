package vestiary.pattern;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import vestiary.calendar.LiturgicalCalendar;

/**
 * The days of a recurring Mass: a rule, from and until when, what limits it, and single days left
 * out. It holds no time of day.
 *
 * @param starts first date that counts
 * @param last last date that counts, included; {@link LocalDate#MAX} if there is none
 * @param except days left out, as EXDATE of RFC 5545, 3.8.5.1, leaves them out
 */
public record MassPattern(
    DayRule days, LocalDate starts, LocalDate last, Limits limits, Set<LocalDate> except) {

  /** Nobody enters a Mass that is first said later than this after its pattern begins. */
  private static final int YEARS_TO_LOOK = 5;

  public MassPattern {
    except = Set.copyOf(except);
  }

  /** Every day of the rule from that date on. */
  public static MassPattern of(DayRule days, LocalDate starts) {
    return new MassPattern(days, starts, LocalDate.MAX, Limits.NONE, Set.of());
  }

  /**
   * Its dates from {@code from} to {@code until}, both included, ascending; dates that the calendar
   * does not know are left out.
   *
   * @param calendar of the church
   * @param terms in any order
   */
  public List<LocalDate> dates(
      LiturgicalCalendar calendar, List<SchoolTerm> terms, LocalDate from, LocalDate until) {
    LocalDate first = later(later(from, starts), LiturgicalCalendar.FIRST);
    LocalDate end = earlier(earlier(until, last), LiturgicalCalendar.LAST.minusDays(1));
    if (first.isAfter(end)) {
      return List.of();
    }
    return days.dates(calendar, starts, first, end).stream()
        .filter(date -> !except.contains(date) && limits.allow(date, calendar, terms))
        .toList();
  }

  /**
   * Whether it has any date within five years of its start, as one in Advent and in July has not.
   *
   * @param terms left aside, since the terms of later years are entered later
   */
  public boolean hasDate(LiturgicalCalendar calendar, List<SchoolTerm> terms) {
    LocalDate first = later(starts, LiturgicalCalendar.FIRST);
    if (first.isAfter(LiturgicalCalendar.LAST)) {
      return false;
    }
    for (int year = 0; year < YEARS_TO_LOOK; year++) {
      LocalDate from = first.plusYears(year);
      if (!dates(calendar, terms, from, from.plusYears(1).minusDays(1)).isEmpty()) {
        return true;
      }
    }
    return false;
  }

  private static LocalDate later(LocalDate a, LocalDate b) {
    return a.isAfter(b) ? a : b;
  }

  private static LocalDate earlier(LocalDate a, LocalDate b) {
    return a.isBefore(b) ? a : b;
  }
}
