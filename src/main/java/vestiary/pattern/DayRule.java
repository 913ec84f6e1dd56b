package vestiary.pattern;

import java.time.LocalDate;
import java.util.List;
import vestiary.calendar.LiturgicalCalendar;

/** Which days a pattern takes before any limit is set to it. */
public sealed interface DayRule permits Recurrence, LiturgicalDays {

  /**
   * The dates from {@code first} to {@code last}, both included, ascending; empty if there are
   * none.
   *
   * @param calendar of the church, which must know every date from {@code first} to the day after
   *     {@code last}
   * @param start date on which the rule begins to count, as every other week needs it
   */
  List<LocalDate> dates(
      LiturgicalCalendar calendar, LocalDate start, LocalDate first, LocalDate last);
}
