package vestiary.calendar;

final class OfferedCalendars {
  private OfferedCalendars() {}

  static OfferedCalendar get(String calendar) {
    throw new IllegalArgumentException("There is no calendar \"" + calendar + "\".");
  }
}
