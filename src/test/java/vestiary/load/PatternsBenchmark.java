package vestiary.load;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.Season;
import vestiary.pattern.DayRule;
import vestiary.pattern.Limits;
import vestiary.pattern.LiturgicalDays;
import vestiary.pattern.LocalHour;
import vestiary.pattern.MassPattern;
import vestiary.pattern.Recurrence;
import vestiary.pattern.SchoolTime;

/** How long the Masses of a year take for ten churches with ten patterns each. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PatternsBenchmark {

  private static final int CHURCHES = 10;
  private static final LocalDate FIRST = LocalDate.of(2026, 11, 29);
  private static final LocalDate LAST = FIRST.plusYears(1).minusDays(1);
  private static final LocalHour HOUR =
      new LocalHour(LocalTime.of(10, 30), ZoneId.of("America/Chicago"));

  private List<LiturgicalCalendar> churches;
  private List<MassPattern> patterns;

  @Setup
  public void enter() {
    churches = new ArrayList<>();
    for (int i = 0; i < CHURCHES; i++) churches.add(fresh());
    Limits weekday = new Limits(Set.of(), Set.of(), true, true, SchoolTime.ALWAYS);
    Limits advent = new Limits(Set.of(Season.ADVENT), Set.of(), false, false, SchoolTime.ALWAYS);
    patterns =
        List.of(
            pattern(Recurrence.parse("FREQ=WEEKLY;BYDAY=SU"), Limits.NONE),
            pattern(Recurrence.parse("FREQ=WEEKLY;BYDAY=SU"), Limits.NONE),
            pattern(Recurrence.parse("FREQ=WEEKLY;BYDAY=SA"), weekday),
            pattern(Recurrence.parse("FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR"), weekday),
            pattern(Recurrence.parse("FREQ=WEEKLY;BYDAY=MO,WE,FR"), weekday),
            pattern(Recurrence.parse("FREQ=WEEKLY;INTERVAL=2;BYDAY=SA"), weekday),
            pattern(Recurrence.parse("FREQ=MONTHLY;BYDAY=1FR"), weekday),
            pattern(Recurrence.parse("FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR,SA"), advent),
            pattern(LiturgicalDays.HOLY_DAYS, Limits.NONE),
            pattern(LiturgicalDays.HOLY_DAY_EVES, Limits.NONE));
  }

  /** With calendars that are worked out already, as a server has them. */
  @Benchmark
  public long yearOfTenChurches() {
    return expand(churches);
  }

  /** With calendars that nobody has asked yet. */
  @Benchmark
  public long yearOfTenChurchesWithTheirCalendars() {
    List<LiturgicalCalendar> opened = new ArrayList<>();
    for (int i = 0; i < CHURCHES; i++) opened.add(fresh());
    return expand(opened);
  }

  private long expand(List<LiturgicalCalendar> calendars) {
    long seconds = 0;
    for (LiturgicalCalendar calendar : calendars) {
      for (MassPattern pattern : patterns) {
        for (LocalDate date : pattern.dates(calendar, List.of(), FIRST, LAST)) {
          seconds += HOUR.on(date).getEpochSecond();
        }
      }
    }
    return seconds;
  }

  private static MassPattern pattern(DayRule days, Limits limits) {
    return new MassPattern(days, LocalDate.of(2024, 1, 1), LocalDate.MAX, limits, Set.of());
  }

  private static LiturgicalCalendar fresh() {
    return LiturgicalCalendar.of(CalendarSettings.defaultsOf("us"), List.of());
  }
}
