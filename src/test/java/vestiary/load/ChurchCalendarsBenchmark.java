package vestiary.load;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.Day;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.Proper;

/** One year of three hundred churches, each with a title and a dedication of its own. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ChurchCalendarsBenchmark {

  private static final int CHURCHES = 300;
  private static final CalendarSettings US = CalendarSettings.defaultsOf("us");
  private static final List<String> TITLES =
      LiturgicalCalendar.of(US, List.of()).titles().stream().map(c -> c.id()).toList();

  @Benchmark
  public List<Day> oneYearOfAllChurches() {
    List<Day> days = new ArrayList<>(CHURCHES);
    for (int church = 0; church < CHURCHES; church++) {
      days.add(LiturgicalCalendar.of(US, propers(church)).day(LocalDate.of(2027, 6, 1)));
    }
    return days;
  }

  private static List<Proper> propers(int church) {
    LocalDate dedicated = LocalDate.of(2023, 1, 1).plusDays(church);
    return List.of(
        new Proper.Titular(TITLES.get(church % TITLES.size())),
        new Proper.Dedication(MonthDay.from(dedicated)));
  }
}
