package vestiary.calendar;

import java.time.DayOfWeek;

/**
 * Which days before 2008 rest on a norm that was another then. Source: decree of 22 April 1990
 * (Notitiae 26, 160) for solemnities on a Sunday; Notitiae 42 (2006) 96 for Saint Joseph; Notitiae
 * 20 (1984) for evenings; the year 1978 for the Baptism of the Lord from memory.
 */
final class ChangedNorms {

  private static final int BAPTISM_ON_MONDAY = 1978;
  private static final int EVENINGS_BY_PRECEPT = 1984;
  private static final int SUNDAY_TO_MONDAY = 1990;

  private ChangedNorms() {}

  static boolean bearOn(Day day) {
    int year = day.date().getYear();
    if (year >= Day.FIRST_EXACT_YEAR) return false;
    return isMove(day)
        || year <= SUNDAY_TO_MONDAY && wentElsewhere(day)
        || year < BAPTISM_ON_MONDAY && isBaptismOnMonday(day)
        || year < EVENINGS_BY_PRECEPT && day.evening().source().startsWith("Notitiae 20");
  }

  private static boolean isMove(Day day) {
    return !day.transfers().isEmpty()
        || day.omitted().stream().anyMatch(o -> o.id().equals("joseph-spouse-of-mary"));
  }

  private static boolean wentElsewhere(Day day) {
    return day.omitted().stream().anyMatch(Omission::isKeptElsewhere);
  }

  private static boolean isBaptismOnMonday(Day day) {
    return day.kept().id().equals("baptism-of-the-lord")
        && day.date().getDayOfWeek() == DayOfWeek.MONDAY;
  }
}
