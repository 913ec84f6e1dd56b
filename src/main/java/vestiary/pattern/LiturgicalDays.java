package vestiary.pattern;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import vestiary.calendar.Day;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.Rank;
import vestiary.calendar.Term;

/**
 * Days that a pattern takes from the calendar of its church rather than from weekdays and dates, so
 * that they move as the calendar does.
 *
 * <p>A holy day that falls on a Sunday is left to the Sunday's own Masses (common practice, no
 * source).
 */
public enum LiturgicalDays implements DayRule, Term {
  /**
   * Holy days of obligation that are no Sundays, as this calendar keeps them. In the United States:
   * Tuesday 8 December 2026. Source: Code of Canon Law, can. 1246; for each calendar its own
   * decrees, which {@link Day#duty} names.
   */
  HOLY_DAYS {
    @Override
    boolean has(Day day, LiturgicalCalendar calendar) {
      return isHolyDay(day);
    }
  },

  /**
   * The evening before such a holy day, where that evening belongs to it: taking part then fulfils
   * the obligation. Monday 7 December 2026. Source: Code of Canon Law, can. 1248 §1.
   */
  HOLY_DAY_EVES {
    @Override
    boolean has(Day day, LiturgicalCalendar calendar) {
      return day.evening().tomorrow() && isHolyDay(calendar.day(day.date().plusDays(1)));
    }
  },

  /** Sundays and holy days of obligation. Source: Code of Canon Law, can. 1246 to 1247. */
  SUNDAYS_AND_HOLY_DAYS {
    @Override
    boolean has(Day day, LiturgicalCalendar calendar) {
      return isSunday(day) || day.obligation();
    }
  },

  /** Days on which a solemnity is kept, Sundays left aside. Source: UNLY 11. */
  SOLEMNITIES {
    @Override
    boolean has(Day day, LiturgicalCalendar calendar) {
      return day.kept().rank() == Rank.SOLEMNITY && !isSunday(day);
    }
  },

  /** Ash Wednesday. Source: UNLY 29. */
  ASH_WEDNESDAY {
    @Override
    boolean has(Day day, LiturgicalCalendar calendar) {
      return day.kept().id().equals("ash-wednesday");
    }
  },

  /** The Commemoration of All the Faithful Departed, 2 November. Source: UNLY 59, I.3. */
  ALL_SOULS {
    @Override
    boolean has(Day day, LiturgicalCalendar calendar) {
      return day.kept().id().equals("all-souls");
    }
  };

  abstract boolean has(Day day, LiturgicalCalendar calendar);

  @Override
  public List<LocalDate> dates(
      LiturgicalCalendar calendar, LocalDate start, LocalDate first, LocalDate last) {
    LocalDate from = start.isAfter(first) ? start : first;
    return from.isAfter(last)
        ? List.of()
        : from.datesUntil(last.plusDays(1))
            .filter(date -> has(calendar.day(date), calendar))
            .toList();
  }

  static boolean isHolyDay(Day day) {
    return day.obligation() && !isSunday(day);
  }

  private static boolean isSunday(Day day) {
    return day.date().getDayOfWeek() == DayOfWeek.SUNDAY;
  }
}
