package vestiary.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import vestiary.cluster.Policies;
import vestiary.people.Person;
import vestiary.planning.SpanToCheck;
import vestiary.schedule.DatedMass;
import vestiary.web.English;

/**
 * Counts how many Masses each priest has on each day by the schedule, concelebrating included. It
 * judges nothing: more than one needs the local ordinary's leave.
 *
 * <p>Source: Code of Canon Law, canon 905.
 */
final class MassesOfPriests {

  private MassesOfPriests() {}

  /** Of the week, by surname. */
  static ReviewView.Tally of(SpanToCheck span) {
    List<LocalDate> days =
        IntStream.range(0, ReadReview.DAYS).mapToObj(span.first()::plusDays).toList();
    Map<Person, List<DatedMass>> masses = new LinkedHashMap<>();
    span.asked().stream()
        .filter(mass -> mass.kind().isMass())
        .forEach(
            mass ->
                mass.people().stream()
                    .filter(person -> person.role().canCelebrate())
                    .forEach(
                        priest ->
                            masses.computeIfAbsent(priest, none -> new ArrayList<>()).add(mass)));
    return new ReviewView.Tally(
        days.stream().map(day -> String.valueOf(day.getDayOfMonth())).toList(),
        masses.entrySet().stream()
            .sorted(Comparator.comparing(one -> one.getKey().shortName()))
            .map(one -> priest(one.getKey(), one.getValue(), days))
            .toList(),
        permitted(span.cluster().policies()));
  }

  private static ReviewView.Priest priest(
      Person priest, List<DatedMass> masses, List<LocalDate> days) {
    Map<LocalDate, Long> byDay =
        masses.stream()
            .map(DatedMass::date)
            .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
    return new ReviewView.Priest(
        priest.tightName(),
        days.stream().map(day -> byDay.containsKey(day) ? byDay.get(day).toString() : "").toList(),
        masses.size());
  }

  private static String permitted(Policies policies) {
    return "Leave on file: %s on a weekday, %s on Sundays and holy days (can. 905). Concelebrating counts; counted by the calendar day."
        .formatted(
            English.count(policies.permittedWeekday()), English.count(policies.permittedSunday()));
  }
}
