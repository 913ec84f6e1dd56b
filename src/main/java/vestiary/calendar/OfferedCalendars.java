package vestiary.calendar;

import java.util.List;

/** The calendars that can be chosen, in the order they are offered. */
final class OfferedCalendars {

  private static final List<CalendarNorms> ALL =
      CsvTable.read("calendars.csv").stream().map(CalendarNorms::from).toList();

  private OfferedCalendars() {}

  static List<OfferedCalendar> all() {
    return ALL.stream().map(CalendarNorms::offered).toList();
  }

  static OfferedCalendar get(String calendar) {
    return norms(calendar).offered();
  }

  static CalendarNorms norms(String calendar) {
    return ALL.stream()
        .filter(norms -> norms.offered().id().equals(calendar))
        .findFirst()
        .orElseThrow(() -> unknown(calendar));
  }

  private static IllegalArgumentException unknown(String calendar) {
    List<String> ids = ALL.stream().map(norms -> norms.offered().id()).toList();
    return new IllegalArgumentException(
        "There is no calendar \"" + calendar + "\"; there are " + String.join(", ", ids) + ".");
  }
}
