package vestiary.load;

import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.Day;
import vestiary.calendar.LiturgicalCalendar;

/** How long one civil year takes that was not worked out before. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class CalendarYearBenchmark {

  private static final int FIRST_YEAR = LiturgicalCalendar.FIRST.getYear();
  private static final int LAST_YEAR = LiturgicalCalendar.LAST.getYear();

  @Param({"general", "us"})
  public String calendar;

  private LiturgicalCalendar church;
  private int year;

  @Setup(Level.Iteration)
  public void openCalendar() {
    church = LiturgicalCalendar.of(CalendarSettings.defaultsOf(calendar), List.of());
    year = FIRST_YEAR;
  }

  /** One fresh year; after the last the calendar is opened anew, so that none is remembered. */
  @Benchmark
  public Day freshYear() {
    if (year > LAST_YEAR) openCalendar();
    return church.day(LocalDate.of(year++, 6, 1));
  }
}
