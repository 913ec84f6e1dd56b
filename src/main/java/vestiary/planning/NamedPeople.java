package vestiary.planning;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import vestiary.allocation.celebrant.Engagement;
import vestiary.allocation.celebrant.Overload;
import vestiary.allocation.celebrant.Pace;
import vestiary.allocation.celebrant.Priest;
import vestiary.allocation.celebrant.PriestId;
import vestiary.allocation.celebrant.Question;
import vestiary.allocation.celebrant.Stay;
import vestiary.allocation.celebrant.Timetable;
import vestiary.allocation.celebrant.WhyNot;
import vestiary.cluster.CountBy;
import vestiary.people.Person;
import vestiary.people.PersonRole;
import vestiary.schedule.DatedMass;

/**
 * Who is named for what in a span and is there, celebrating, concelebrating or assisting, and who
 * else could take it. A deacon says no Mass, and a bishop does not ask the local ordinary for
 * leave: theirs are not counted.
 */
final class NamedPeople {

  private final SpanToCheck span;
  private final Question question;
  private final Map<Person, List<DatedMass>> named = new LinkedHashMap<>();
  private final Map<Person, Timetable> others = new HashMap<>();

  NamedPeople(SpanToCheck span) {
    this.span = span;
    this.question =
        new Question(List.of(), List.of(), List.of(), span.journeys(), Pace.USUAL, Duration.ZERO);
    for (DatedMass mass : span.masses()) {
      mass.people().stream()
          .filter(person -> isThere(person, mass))
          .forEach(person -> named.computeIfAbsent(person, none -> new ArrayList<>()).add(mass));
    }
  }

  /** Where he is away he serves nothing, and that alone is said of it. */
  private boolean isThere(Person person, DatedMass mass) {
    return span.attendance()
        .find(person.id(), mass.start().toInstant(), mass.end().toInstant())
        .isEmpty();
  }

  /** Everybody who is named twice or more, and what he cannot do. */
  Map<Person, Overload> overloads() {
    Map<Person, Overload> all = new LinkedHashMap<>();
    named.forEach(
        (person, masses) -> {
          if (masses.size() > 1) {
            all.put(person, Overload.of(question, priest(person), engagements(person, masses)));
          }
        });
    return all;
  }

  /** His Masses on the day of one of them, counted in one of the two ways; by start. */
  List<DatedMass> ofOneDay(Person person, DatedMass mass, CountBy countBy) {
    return named.get(person).stream()
        .filter(one -> one.kind().isMass())
        .filter(
            one ->
                span.serving().counted(one, countBy).equals(span.serving().counted(mass, countBy)))
        .toList();
  }

  /** How many he may or will have on the day of one of his, counted in one of the two ways. */
  int most(Person person, DatedMass mass, CountBy countBy) {
    return priest(person).most(span.serving().counted(mass, countBy));
  }

  /** Priests of the cluster who could celebrate a Mass beside all else they do, by surname. */
  List<Person> others(DatedMass mass) {
    return span.attendance().celebrants().stream()
        .filter(person -> person.role() == PersonRole.PRIEST && !mass.people().contains(person))
        .filter(person -> findWhyNot(person, mass, Serving.stay(mass)).isEmpty())
        .sorted(Comparator.comparing(Person::shortName).thenComparing(Person::id))
        .toList();
  }

  /** Why a person cannot take a Mass at that time beside all else that he does. */
  Optional<WhyNot> findWhyNot(Person person, DatedMass mass, Stay stay) {
    return others
        .computeIfAbsent(
            person,
            one ->
                Timetable.asNamed(
                    question, priest(one), engagements(one, named.getOrDefault(one, List.of()))))
        .findWhyNot(stay, span.serving().counted(mass, countBy()));
  }

  CountBy countBy() {
    return span.cluster().policies().countBy();
  }

  private Priest priest(Person person) {
    return span.serving().priest(person, span.cluster().policies(), span.attendance().absences());
  }

  private List<Engagement> engagements(Person person, List<DatedMass> masses) {
    PriestId id = new PriestId(person.id());
    return masses.stream()
        .map(
            mass ->
                new Engagement(
                    id,
                    Serving.stay(mass),
                    span.serving().counted(mass, countBy()),
                    mass.kind().isMass() && person.role() == PersonRole.PRIEST,
                    0))
        .toList();
  }
}
