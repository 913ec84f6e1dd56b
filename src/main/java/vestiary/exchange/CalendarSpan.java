package vestiary.exchange;

import java.time.LocalDate;
import java.util.Map;

/**
 * What of a calendar is brought in.
 *
 * @param church short name of the church of all events; empty where each says its own
 * @param from first local date; likewise to, the last, included
 */
record CalendarSpan(String church, LocalDate from, LocalDate to) {

  /** Two years: nobody fixes Masses for longer. */
  static final int MOST_DAYS = 731;

  static CalendarSpan of(ChosenColumns chosen) {
    return new CalendarSpan(
        chosen.same().getOrDefault(CalendarSheet.CHURCH, ""),
        LocalDate.parse(chosen.same().get(CalendarSheet.FROM)),
        LocalDate.parse(chosen.same().get(CalendarSheet.TO)));
  }

  ChosenColumns chosen() {
    return new ChosenColumns(
        Map.of(),
        Map.of(
            CalendarSheet.CHURCH, church,
            CalendarSheet.FROM, from.toString(),
            CalendarSheet.TO, to.toString()),
        "");
  }

  boolean holds(LocalDate date) {
    return !date.isBefore(from) && !date.isAfter(to);
  }
}
