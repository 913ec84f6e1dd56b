package vestiary.calendar;

import java.time.LocalDate;

/** Shows the calendar's own reckoning of Easter to the checks against others. */
public final class EasterOfTheCalendar {

  private EasterOfTheCalendar() {}

  public static LocalDate in(int year) {
    return LocalDate.ofYearDay(year, Computus.easter(year));
  }
}
