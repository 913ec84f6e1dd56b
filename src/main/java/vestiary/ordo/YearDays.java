package vestiary.ordo;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.calendar.Celebration;
import vestiary.calendar.Day;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.Omission;
import vestiary.calendar.Precedence;
import vestiary.calendar.Rank;

/**
 * The days that one calendar gives a liturgical year, with what can be said only of several days
 * together: where a celebration was moved, and which evenings are not as usual.
 */
final class YearDays {

  /**
   * The longest way that a celebration is moved: the Annunciation in Holy Week goes past the octave
   * of Easter, at most sixteen days, and others to the next free day (UNLY 60). Beyond that the
   * same celebration is met on another year's date.
   */
  private static final int FARTHEST_DAYS = 31;

  private static final String EASTER_VIGIL = "easter-vigil";

  private final LiturgicalYear year;
  private final List<Day> days;
  private final Map<String, List<LocalDate>> kept = new HashMap<>();
  private final Map<String, List<LocalDate>> omitted = new HashMap<>();
  private final Celebration vigil;

  private YearDays(LiturgicalYear year, LiturgicalCalendar calendar) {
    this.year = year;
    this.days = calendar.days(year.first(), year.last().plusDays(1));
    this.vigil = calendar.find(EASTER_VIGIL).orElseThrow();
    for (Day day : days) {
      note(kept, day.kept().id(), day.date());
      day.omitted().forEach(o -> note(omitted, o.id(), day.date()));
    }
  }

  /** Asks the calendar once for every day. */
  static YearDays of(LiturgicalYear year, LiturgicalCalendar calendar) {
    return new YearDays(year, calendar);
  }

  /** The days of the year, in order. */
  List<Day> all() {
    return days.subList(0, days.size() - 1);
  }

  /** The day on this date of the year, or the one after its last. */
  Day on(LocalDate date) {
    return days.get((int) ChronoUnit.DAYS.between(year.first(), date));
  }

  /** The first day that keeps one of these celebrations. */
  Optional<Day> findFirst(List<String> ids) {
    return all().stream().filter(d -> ids.contains(d.kept().id())).findFirst();
  }

  /** Where a celebration that is left out on this date is kept instead. */
  Optional<LocalDate> findMovedTo(Omission omission, LocalDate from) {
    return near(kept, omission.id(), from);
  }

  /** The date from which what is kept on this one was moved here. */
  Optional<LocalDate> findMovedFrom(LocalDate date) {
    return near(omitted, on(date).kept().id(), date);
  }

  /**
   * What this evening already celebrates, where that is not as usual: the eve of a holy day or a
   * solemnity on a weekday, and the Easter Vigil. That a Saturday begins the Sunday is usual.
   */
  Optional<Celebration> findEve(LocalDate date) {
    Day day = on(date);
    if (!day.evening().tomorrow()) return Optional.empty();
    if (day.kept().precedence() == Precedence.TRIDUUM) return Optional.of(vigil);
    Day next = on(date.plusDays(1));
    return isSunday(next) ? Optional.empty() : Optional.of(next.kept());
  }

  /** Whether the evening stays this day's although the next day would commonly begin it. */
  boolean isEveningKept(LocalDate date) {
    return !on(date).evening().tomorrow() && commonlyBeginsTheEveningBefore(date.plusDays(1));
  }

  /** Sundays and solemnities, but no day of the Easter octave and not All Souls. UNLY 3, 11. */
  private boolean commonlyBeginsTheEveningBefore(LocalDate date) {
    Day day = on(date);
    Precedence place = day.kept().precedence();
    return isSunday(day)
        || day.kept().rank() == Rank.SOLEMNITY
            && place != Precedence.EASTER_OCTAVE
            && place != Precedence.ALL_SOULS;
  }

  private static boolean isSunday(Day day) {
    return day.date().getDayOfWeek() == DayOfWeek.SUNDAY;
  }

  private static Optional<LocalDate> near(
      Map<String, List<LocalDate>> dates, String id, LocalDate date) {
    return dates.getOrDefault(id, List.of()).stream()
        .filter(d -> !d.equals(date) && Math.abs(ChronoUnit.DAYS.between(d, date)) <= FARTHEST_DAYS)
        .findFirst();
  }

  private static void note(Map<String, List<LocalDate>> dates, String id, LocalDate date) {
    dates.merge(
        id, List.of(date), (before, one) -> Stream.concat(before.stream(), one.stream()).toList());
  }
}
