package vestiary.review;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import vestiary.cluster.CountBy;
import vestiary.cluster.Policies;
import vestiary.people.Person;
import vestiary.planning.SpanToCheck;
import vestiary.schedule.DatedMass;
import vestiary.web.Speech;

/**
 * Counts how many Masses each priest has on each day by the schedule, concelebrating included,
 * counted as the cluster counts; where the other kind of day gives another number, both are told.
 * It judges nothing: more than one needs the local ordinary's leave.
 *
 * <p>Source: Code of Canon Law, canon 905.
 */
final class MassesOfPriests {

  private final SpanToCheck span;
  private final List<LocalDate> days;

  private MassesOfPriests(SpanToCheck span) {
    this.span = span;
    this.days = IntStream.range(0, ReadReview.DAYS).mapToObj(span.first()::plusDays).toList();
  }

  /** Of the week, by surname. */
  static ReviewView.Tally of(SpanToCheck span) {
    return new MassesOfPriests(span).tally();
  }

  private ReviewView.Tally tally() {
    Map<Person, List<DatedMass>> masses = new LinkedHashMap<>();
    span.masses().stream()
        .filter(mass -> mass.kind().isMass())
        .forEach(
            mass ->
                mass.people().stream()
                    .filter(person -> person.role().canCelebrate())
                    .forEach(
                        priest ->
                            masses.computeIfAbsent(priest, none -> new ArrayList<>()).add(mass)));
    List<Count> counts =
        masses.entrySet().stream()
            .sorted(Comparator.comparing(one -> one.getKey().shortName()))
            .map(one -> count(one.getKey(), one.getValue()))
            .filter(one -> !one.byDay().isEmpty())
            .toList();
    return new ReviewView.Tally(
        days.stream().map(day -> String.valueOf(day.getDayOfMonth())).toList(),
        counts.stream().map(this::priest).toList(),
        permitted(span.cluster().policies()),
        counts.stream().flatMap(one -> differing(one).stream()).toList());
  }

  /** What one priest has on each day, counted as the cluster counts, and otherwise. */
  private record Count(Person priest, Map<LocalDate, Long> byDay, Map<LocalDate, Long> otherwise) {}

  private Count count(Person priest, List<DatedMass> masses) {
    CountBy usual = span.cluster().policies().countBy();
    return new Count(priest, byDay(masses, usual), byDay(masses, other(usual)));
  }

  private Map<LocalDate, Long> byDay(List<DatedMass> masses, CountBy countBy) {
    return masses.stream()
        .map(mass -> span.serving().counted(mass, countBy).date())
        .filter(days::contains)
        .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
  }

  private ReviewView.Priest priest(Count count) {
    return new ReviewView.Priest(
        count.priest().tightName(),
        days.stream()
            .map(day -> count.byDay().containsKey(day) ? count.byDay().get(day).toString() : "")
            .toList(),
        (int) count.byDay().values().stream().mapToLong(Long::longValue).sum());
  }

  private List<String> differing(Count count) {
    CountBy usual = span.cluster().policies().countBy();
    return days.stream()
        .filter(day -> number(count.byDay(), day) != number(count.otherwise(), day))
        .map(
            day ->
                say(
                    usual == CountBy.CALENDAR
                        ? word("%s, %s: by the calendar day %d, by the liturgical day %d.")
                        : word("%s, %s: by the liturgical day %d, by the calendar day %d."),
                    count.priest().tightName(),
                    Speech.day(day),
                    number(count.byDay(), day),
                    number(count.otherwise(), day)))
        .toList();
  }

  private static long number(Map<LocalDate, Long> byDay, LocalDate day) {
    return byDay.getOrDefault(day, 0L);
  }

  private static CountBy other(CountBy countBy) {
    return countBy == CountBy.CALENDAR ? CountBy.LITURGICAL : CountBy.CALENDAR;
  }

  private static String permitted(Policies policies) {
    return say(
        policies.countBy() == CountBy.CALENDAR
            ? word(
                "Leave on file: %s on a weekday, %s on Sundays and holy days (can. 905), unless a priest has his own. Concelebrating counts; counted by the calendar day.")
            : word(
                "Leave on file: %s on a weekday, %s on Sundays and holy days (can. 905), unless a priest has his own. Concelebrating counts; counted by the liturgical day."),
        Speech.count(policies.permittedWeekday()),
        Speech.count(policies.permittedSunday()));
  }
}
