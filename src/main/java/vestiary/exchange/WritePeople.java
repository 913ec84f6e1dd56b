package vestiary.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.DayOfWeek;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.people.Absence;
import vestiary.people.Children;
import vestiary.people.FindPeople;
import vestiary.people.Ministry;
import vestiary.people.Person;
import vestiary.people.ReadAbsences;
import vestiary.people.ReadMinistries;

/** People and when they are away, as lists. */
@ApplicationScoped
@Transactional
class WritePeople {

  private final FindPeople people;
  private final Children children;
  private final ReadMinistries ministries;
  private final ReadAbsences absences;
  private final ReadCluster cluster;

  WritePeople(
      FindPeople people,
      Children children,
      ReadMinistries ministries,
      ReadAbsences absences,
      ReadCluster cluster) {
    this.people = people;
    this.children = children;
    this.ministries = ministries;
    this.absences = absences;
    this.cluster = cluster;
  }

  /** Those who were removed for good are left out. */
  List<WrittenLine> people() {
    Map<UUID, Ministry> served = ministries.all();
    List<Church> churches = cluster.churches();
    return people.all().stream()
        .map(
            person ->
                ministry(
                    person(person), served.getOrDefault(person.id(), Ministry.UNSAID), churches))
        .toList();
  }

  private WrittenLine person(Person person) {
    WrittenLine line =
        new WrittenLine()
            .with("key", person.slug())
            .with("name", person.name())
            .with("shortName", person.shortName())
            .with("title", person.title())
            .with("role", person.role().id())
            .with("visiting", person.isVisiting());
    children
        .find(person.id())
        .ifPresent(
            child ->
                line.with("name", child.wholeName())
                    .with("minor", true)
                    .with("responsible", child.responsible()));
    return line;
  }

  private static WrittenLine ministry(WrittenLine line, Ministry served, List<Church> churches) {
    line.withAll(
            "churches",
            churches.stream()
                .filter(church -> served.churches().contains(church.id()))
                .map(Church::slug))
        .withAll("languages", served.languages().stream())
        .withAll(
            "days",
            served.days().stream()
                .sorted()
                .map(DayOfWeek::name)
                .map(day -> day.toLowerCase(Locale.ROOT)))
        .withCount("mostADay", served.mostADay())
        .with("wishes", served.wishes())
        .with("ownSet", served.ownSet());
    served
        .findPermission()
        .ifPresent(
            permission ->
                line.with("permittedWeekday", permission.weekday())
                    .with("permittedSunday", permission.sunday())
                    .with("grantedBy", permission.grantedBy())
                    .withAll("grantedOn", permission.granted().stream()));
    return line;
  }

  /** Whole days alone: the list has no hours. */
  List<WrittenLine> absences() {
    Map<UUID, String> slugs =
        people.all().stream().collect(Collectors.toMap(Person::id, Person::slug));
    WholeDays days = new WholeDays(cluster.cluster().zone());
    List<Absence> all =
        absences.between(Instant.EPOCH, Absence.UNKNOWN).stream()
            .filter(away -> slugs.containsKey(away.person()))
            .filter(away -> days.isFrom(away.from()) && (away.isOpen() || days.isFrom(away.to())))
            .sorted(
                Comparator.comparing(Absence::from)
                    .thenComparing(away -> slugs.get(away.person()))
                    .thenComparing(Absence::to))
            .toList();
    Map<UUID, String> reasons = absences.reasons(all);
    return all.stream()
        .map(
            away ->
                new WrittenLine()
                    .with("person", slugs.get(away.person()))
                    .with("from", days.first(away.from()))
                    .with("to", away.isOpen() ? "" : days.last(away.to()))
                    .with("reason", reasons.getOrDefault(away.id(), "")))
        .toList();
  }
}
