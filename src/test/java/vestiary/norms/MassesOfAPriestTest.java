package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import vestiary.allocation.celebrant.CountedDay;
import vestiary.allocation.celebrant.Permitted;
import vestiary.allocation.celebrant.Precept;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.MassKind;
import vestiary.calendar.Term;

/** How many Masses a priest may celebrate on which day, and by which Mass the precept is kept. */
class MassesOfAPriestTest {

  private static final LiturgicalCalendar CALENDAR =
      LiturgicalCalendar.of(CalendarSettings.defaultsOf("us"), List.of());

  private static final LocalTime EVENING = LocalTime.of(16, 0);

  @TestFactory
  Stream<DynamicTest> a_priest_may_celebrate_as_often_as_law_and_leave_say() {
    return FactTable.read("masses-of-a-priest.csv").stream()
        .map(
            fact ->
                DynamicTest.dynamicTest(
                    fact.get("masses") + ", " + fact.get("source"),
                    () -> assertEquals(fact.get("allowed").equals("yes"), isAllowed(fact))));
  }

  @TestFactory
  Stream<DynamicTest> the_precept_is_kept_on_the_day_or_the_evening_before() {
    return FactTable.read("precept.csv").stream()
        .map(
            fact ->
                DynamicTest.dynamicTest(
                    fact.get("start") + ", " + fact.get("source"),
                    () -> assertEquals(fact.get("fulfils").equals("yes"), fulfils(fact))));
  }

  private static boolean isAllowed(CSVRecord fact) {
    Permitted permitted =
        new Permitted(Integer.parseInt(fact.get("weekday")), Integer.parseInt(fact.get("sunday")));
    Map<CountedDay, Long> masses =
        Stream.of(fact.get("masses").split(";"))
            .map(MassesOfAPriestTest::counted)
            .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
    return masses.entrySet().stream()
        .allMatch(day -> day.getValue() <= permitted.most(day.getKey()));
  }

  private static CountedDay counted(String mass) {
    String[] words = mass.split(" ");
    return CountedDay.of(
        Term.find(MassKind.class, words[0]).orElseThrow(), CALENDAR.day(LocalDate.parse(words[1])));
  }

  private static boolean fulfils(CSVRecord fact) {
    LocalDateTime start = LocalDateTime.parse(fact.get("start"));
    LocalDate date = start.toLocalDate();
    return Precept.isFulfilledBy(
        start, CALENDAR.day(date), CALENDAR.day(date.plusDays(1)), EVENING);
  }
}
