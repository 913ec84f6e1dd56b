package vestiary.schedule;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.pattern.SchoolTerm;

/** Tells on which dates patterns have Mass, each by the calendar of its own church. */
record PatternDates(Map<UUID, LiturgicalCalendar> calendars, List<SchoolTerm> terms) {

  PatternDates {
    calendars = Map.copyOf(calendars);
    terms = List.copyOf(terms);
  }

  /** From {@code first} to {@code last}, both included, ascending. */
  List<LocalDate> between(PatternRow pattern, LocalDate first, LocalDate last) {
    return pattern.toPattern().dates(calendars.get(pattern.churchId), terms, first, last);
  }

  /** Whether there is any at all, soon enough for somebody to mean it. */
  boolean hasAny(PatternRow pattern) {
    return pattern.toPattern().hasDate(calendars.get(pattern.churchId), terms);
  }
}
