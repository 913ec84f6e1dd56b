package vestiary.calendar;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/** The calendar of one church. */
public final class LiturgicalCalendar {

  public static final LocalDate FIRST = LocalDate.of(1970, 1, 1);
  public static final LocalDate LAST = LocalDate.of(2300, 12, 31);

  private LiturgicalCalendar() {}

  public static List<OfferedCalendar> offered() {
    throw new UnsupportedOperationException();
  }

  public static LiturgicalCalendar of(CalendarSettings settings, List<Proper> propers) {
    throw new UnsupportedOperationException();
  }

  public Day day(LocalDate date) {
    throw new UnsupportedOperationException();
  }

  public List<Day> days(LocalDate first, LocalDate last) {
    throw new UnsupportedOperationException();
  }

  public Optional<Celebration> find(String celebrationId) {
    throw new UnsupportedOperationException();
  }

  public MassKind kindAt(LocalDateTime start, LocalTime anticipatedFrom) {
    throw new UnsupportedOperationException();
  }

  public LocalDate liturgicalDate(LocalDateTime start, MassKind kind) {
    throw new UnsupportedOperationException();
  }

  public MassRuling ruling(LocalDateTime start, MassKind kind, String votiveOf, Leave leave) {
    throw new UnsupportedOperationException();
  }
}
