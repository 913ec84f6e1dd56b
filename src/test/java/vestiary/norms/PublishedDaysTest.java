package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import vestiary.calendar.Celebration;
import vestiary.calendar.Colour;
import vestiary.calendar.Day;

/**
 * Facts about single days, in {@code norms}: each stands in the published page, or follows from the
 * norm, that its line names. Where two publications disagree the line names both and the norm that
 * decides.
 */
@ExtendWith(OneTally.class)
class PublishedDaysTest {

  private static final List<String> TABLES =
      List.of("days.csv", "printed-days.csv", "printed-weeks.csv", "norm-days.csv", "propers.csv");

  @TestFactory
  Stream<DynamicTest> days_are_as_published(FactTally tally) {
    return TABLES.stream()
        .flatMap(table -> FactTable.read(table).stream())
        .map(fact -> DynamicTest.dynamicTest(name(fact), () -> check(fact, tally)));
  }

  private static String name(CSVRecord fact) {
    return String.join(" ", fact.toList().subList(0, 5)) + ": " + fact.get("source");
  }

  private static void check(CSVRecord fact, FactTally tally) {
    Day day =
        new ChurchOfFact(fact.get("calendar"), fact.get("options"))
            .liturgicalCalendar()
            .day(LocalDate.parse(fact.get("date")));
    String expected = fact.get("expected");
    switch (fact.get("check")) {
      case "offers" -> assertTrue(offers(day, expected), () -> "offers " + day.celebrations());
      case "not-offered" -> assertFalse(offers(day, expected));
      case "omitted" ->
          assertTrue(
              day.omitted().stream().anyMatch(o -> o.id().equals(expected)),
              () -> "omits " + day.omitted());
      default -> assertEquals(expected, answer(day, fact.get("check")));
    }
    tally.add(new Source(fact.get("source")));
  }

  /** Whether the day offers this celebration, written as id, id:rank or id:colours. */
  private static boolean offers(Day day, String expected) {
    return day.celebrations().stream()
        .flatMap(c -> Stream.of(c.id(), c.id() + ":" + c.rank().id(), c.id() + ":" + colours(c)))
        .anyMatch(expected::equals);
  }

  private static String answer(Day day, String check) {
    Celebration kept = day.kept();
    return switch (check) {
      case "kept" -> kept.id();
      case "name" -> kept.name().english();
      case "rank" -> kept.rank().id();
      case "place" -> kept.precedence().source();
      case "colours" -> colours(kept);
      case "season" -> day.season().id();
      case "week" -> String.valueOf(day.week());
      case "sunday-cycle" -> day.sundayCycle().name();
      case "weekday-cycle" -> day.weekdayCycle().name();
      case "obligation" -> day.obligation() ? "yes" : "no";
      case "psalter-week" -> String.valueOf(day.psalterWeek());
      case "leeway" -> day.evening().leeway().id();
      case "evening" -> day.evening().tomorrow() ? "tomorrow" : "today";
      default -> throw new IllegalArgumentException("No such check: " + check);
    };
  }

  private static String colours(Celebration celebration) {
    return celebration.colours().stream().map(Colour::id).collect(Collectors.joining("|"));
  }
}
