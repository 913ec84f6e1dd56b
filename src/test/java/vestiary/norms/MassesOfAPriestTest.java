package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import vestiary.allocation.Journeys;
import vestiary.allocation.celebrant.CountedDay;
import vestiary.allocation.celebrant.Engagement;
import vestiary.allocation.celebrant.Overload;
import vestiary.allocation.celebrant.Pace;
import vestiary.allocation.celebrant.Permitted;
import vestiary.allocation.celebrant.Precept;
import vestiary.allocation.celebrant.Priest;
import vestiary.allocation.celebrant.PriestId;
import vestiary.allocation.celebrant.Question;
import vestiary.allocation.celebrant.Stay;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.MassKind;
import vestiary.calendar.Term;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;

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
  Stream<DynamicTest> the_check_finds_too_many_where_law_and_leave_allow_no_more() {
    return FactTable.read("masses-of-a-priest.csv").stream()
        .map(
            fact ->
                DynamicTest.dynamicTest(
                    fact.get("masses") + ", " + fact.get("source"),
                    () ->
                        assertEquals(
                            fact.get("allowed").equals("yes"),
                            overload(fact).tooMany().isEmpty())));
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
    Permitted permitted = permitted(fact);
    Map<CountedDay, Long> masses =
        Stream.of(fact.get("masses").split(";"))
            .map(MassesOfAPriestTest::counted)
            .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
    return masses.entrySet().stream()
        .allMatch(day -> day.getValue() <= permitted.most(day.getKey()));
  }

  private static Permitted permitted(CSVRecord fact) {
    return new Permitted(
        Integer.parseInt(fact.get("weekday")), Integer.parseInt(fact.get("sunday")));
  }

  /** The Masses one after the other in one church. */
  private static Overload overload(CSVRecord fact) {
    PriestId id = new PriestId(new UUID(1, 1));
    Priest priest =
        new Priest(
            id,
            Priest.NO_BOUND_OF_HIS_OWN,
            permitted(fact),
            Set.of(),
            Set.of(),
            List.of(),
            Set.of(),
            List.of());
    List<String> masses = List.of(fact.get("masses").split(";"));
    return Overload.of(
        new Question(
            List.of(), List.of(), List.of(), Journeys.of(List.of()), Pace.USUAL, Duration.ZERO),
        priest,
        IntStream.range(0, masses.size())
            .mapToObj(
                place ->
                    new Engagement(
                        id, stay(masses.get(place), place), counted(masses.get(place)), true, 0))
            .toList());
  }

  private static Stay stay(String mass, int place) {
    LocalDate date = LocalDate.parse(mass.split(" ")[1]);
    Instant start = date.atTime(8, 0).plusHours(2L * place).toInstant(ZoneOffset.UTC);
    return new Stay(
        new MassId(new UUID(2, place)),
        new ChurchId(new UUID(3, 1)),
        date,
        start,
        start.plus(Duration.ofMinutes(30)));
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
