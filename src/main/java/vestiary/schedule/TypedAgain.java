package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.people.FindPeople;
import vestiary.people.Person;

/** The schedule as somebody would have to type it once more. */
@ApplicationScoped
@Transactional
public class TypedAgain {

  private static final int DATE_LENGTH = "2026-12-08".length();

  private final PatternRows patterns;
  private final MassRows masses;
  private final ReadCluster cluster;
  private final FindPeople people;
  private final CurrentVisitor visitor;
  private final ReadServing serving;

  TypedAgain(
      PatternRows patterns,
      MassRows masses,
      ReadCluster cluster,
      FindPeople people,
      CurrentVisitor visitor,
      ReadServing serving) {
    this.serving = serving;
    this.patterns = patterns;
    this.masses = masses;
    this.cluster = cluster;
    this.people = people;
    this.visitor = visitor;
  }

  /**
   * A Mass and what it takes the place of.
   *
   * @param replaces local times of regular Masses of the same church and day that are not said for
   *     its sake
   * @param serving who serves, by name
   */
  public record TypedMass(
      SaveMass.Request mass, List<LocalTime> replaces, List<WhoServes> serving) {
    public TypedMass {
      replaces = List.copyOf(replaces);
      serving = List.copyOf(serving);
    }
  }

  /** Every recurring Mass time, by church, hour and first date. */
  public List<SavePattern.Request> patterns() {
    Map<UUID, String> churches = churches();
    Map<UUID, String> names = names();
    return patterns.listAll().stream()
        .map(row -> pattern(row, churches.get(row.churchId), names))
        .sorted(
            Comparator.comparing(SavePattern.Request::church)
                .thenComparing(SavePattern.Request::time)
                .thenComparing(SavePattern.Request::starts)
                .thenComparing(SavePattern.Request::rrule)
                .thenComparing(pattern -> pattern.bounds().days()))
        .toList();
  }

  /**
   * Masses that were entered or changed by hand and are not cancelled, by start and church; all
   * others follow from the recurring times. Intentions are left out for whoever may not see them.
   */
  public List<TypedMass> massesByHand() {
    ZoneId zone = cluster.cluster().zone();
    Map<UUID, String> churches = churches();
    Map<UUID, String> names = names();
    Map<UUID, List<MassRow>> gaveWay =
        masses.list("cancelled and takenOverBy is not null order by starts, id").stream()
            .collect(Collectors.groupingBy(row -> row.takenOverBy));
    List<MassRow> touched = masses.list("touched and not cancelled order by starts, id");
    Map<UUID, List<WhoServes>> serve =
        serving.at(touched.stream().map(row -> row.id).toList(), people.byId());
    return touched.stream()
        .map(
            row ->
                new TypedMass(
                    mass(row, churches.get(row.churchId), names, zone),
                    gaveWay.getOrDefault(row.id, List.of()).stream()
                        .filter(other -> isSameDay(row, other, zone))
                        .map(other -> local(other, zone).toLocalTime())
                        .toList(),
                    serve.getOrDefault(row.id, List.of())))
        .sorted(
            Comparator.comparing((TypedMass typed) -> typed.mass().start())
                .thenComparing(typed -> typed.mass().church()))
        .toList();
  }

  private static boolean isSameDay(MassRow row, MassRow other, ZoneId zone) {
    return other.churchId.equals(row.churchId)
        && local(other, zone).toLocalDate().equals(local(row, zone).toLocalDate());
  }

  private static ZonedDateTime local(MassRow row, ZoneId zone) {
    return row.starts.atZone(zone);
  }

  private static SavePattern.Request pattern(
      PatternRow row, String church, Map<UUID, String> names) {
    return new SavePattern.Request(
        church,
        row.rrule,
        row.starts.toString(),
        row.at.toString(),
        row.minutes,
        row.kind,
        names.getOrDefault(row.celebrantId, ""),
        row.concelebrants,
        row.deacons,
        row.ministers,
        row.note,
        row.language,
        new SavePattern.Bounds(
            row.days,
            row.ends == null ? "" : row.ends.toString(),
            Arrays.asList(row.seasons),
            Arrays.asList(row.months),
            row.notInTriduum,
            row.notOnHolyDays,
            row.school,
            Stream.of(row.except).map(Objects::toString).toList()));
  }

  private SaveMass.Request mass(MassRow row, String church, Map<UUID, String> names, ZoneId zone) {
    return new SaveMass.Request(
        church,
        local(row, zone).toLocalDateTime().toString(),
        row.minutes,
        row.kind,
        row.votiveOf,
        row.leave,
        row.celebration,
        row.colour,
        names.getOrDefault(row.celebrantId, ""),
        row.concelebrants,
        row.deacons,
        Stream.of(row.namedIds).map(names::get).filter(Objects::nonNull).toList(),
        row.brings,
        row.bishop,
        row.ministers,
        Arrays.asList(row.also),
        row.setOutMinutes,
        row.note,
        visitor.visitor().may(Action.SEE_INTENTIONS) ? row.intention : "",
        row.language,
        null);
  }

  /** The Mass as it stands, but where and when, how long and of which kind the other has it. */
  SaveMass.Request retimed(MassRow row, SaveMass.Request other) {
    SaveMass.Request now = mass(row, other.church(), names(), cluster.cluster().zone());
    boolean isSameDay = now.start().startsWith(other.start().substring(0, DATE_LENGTH));
    return new SaveMass.Request(
        other.church(),
        other.start(),
        other.minutes() == null ? now.minutes() : other.minutes(),
        other.mass(),
        now.votiveOf(),
        now.leave(),
        // What was chosen on one day need not be there on another.
        isSameDay && now.mass().equals(other.mass()) ? now.celebration() : "",
        isSameDay && now.mass().equals(other.mass()) ? now.colour() : "",
        now.celebrant(),
        now.concelebrants(),
        now.deacons(),
        now.named(),
        now.brings(),
        now.bishop(),
        now.ministers(),
        now.also(),
        now.setOutMinutes(),
        now.note(),
        row.intention,
        now.language(),
        null);
  }

  private Map<UUID, String> churches() {
    return cluster.churches().stream()
        .collect(Collectors.toMap(church -> church.id().value(), Church::slug));
  }

  /** Those who were removed for good cannot be named again. */
  private Map<UUID, String> names() {
    return people.all().stream().collect(Collectors.toMap(Person::id, Person::slug));
  }
}
