package vestiary.history;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.cluster.Church;
import vestiary.cluster.ChurchCalendars;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.device.SharedDevicesOfCluster;
import vestiary.oversight.Overseers;
import vestiary.people.FindPeople;
import vestiary.pool.PoolNames;
import vestiary.schedule.MassNames;
import vestiary.users.UserNames;
import vestiary.web.Speech;

/** Changes point at people and things by ids, which nobody knows by heart. */
@ApplicationScoped
class NameThings {

  static final String SERVER = "server";

  private final ReadCluster cluster;
  private final FindPeople people;
  private final UserNames users;
  private final SharedDevicesOfCluster devices;
  private final PoolNames pool;
  private final MassNames masses;
  private final Overseers overseers;
  private final ChurchCalendars calendars;

  NameThings(
      ReadCluster cluster,
      FindPeople people,
      UserNames users,
      SharedDevicesOfCluster devices,
      PoolNames pool,
      MassNames masses,
      Overseers overseers,
      ChurchCalendars calendars) {
    this.cluster = cluster;
    this.people = people;
    this.users = users;
    this.devices = devices;
    this.pool = pool;
    this.masses = masses;
    this.overseers = overseers;
    this.calendars = calendars;
  }

  /** Names of whoever can have made a change, by mark. */
  Map<String, String> makers() {
    Map<UUID, String> names = new HashMap<>();
    people.byId().forEach((id, person) -> names.put(id, person.name()));
    overseers.names().forEach((id, name) -> names.put(id, say("%s, overseer", name)));
    names.putAll(users.all());
    return byMark(names);
  }

  private static Map<String, String> byMark(Map<UUID, String> names) {
    return names.entrySet().stream()
        .collect(Collectors.toMap(e -> e.getKey().toString(), Map.Entry::getValue));
  }

  /** Names by id of all that these changes point at, as they are now. */
  Map<String, String> named(List<AuditRow> changes, ZoneId zone) {
    Map<UUID, String> names = new HashMap<>(pool.all());
    cluster.churches().forEach(c -> names.put(c.id().value(), c.name()));
    people.byId().forEach((id, person) -> names.put(id, person.name()));
    overseers.names().forEach((id, name) -> names.put(id, say("%s, overseer", name)));
    names.putAll(users.all());
    names.putAll(devices.names());
    names.putAll(masses.of(pointedAt(changes), zone));
    return byMark(names);
  }

  /** Names of celebrations by their ids in the calendar of the cluster, or in that of a church. */
  Function<String, Optional<String>> celebrations() {
    Cluster here = cluster.cluster();
    List<Church> churches = cluster.churches();
    Locale locale = Speech.localeOr(here.language());
    return id ->
        Stream.concat(
                Stream.of(calendars.plain(here)),
                churches.stream().map(church -> calendars.of(here, church)))
            .flatMap(calendar -> calendar.find(id).stream())
            .map(celebration -> celebration.name().in(locale))
            .findFirst();
  }

  /** What the maker of a change is called. */
  static String who(String mark, Map<String, String> names) {
    return switch (mark) {
      case "" -> say("The server itself");
      case SERVER -> say("The token of the server");
      default -> names.getOrDefault(mark, say("A person who was removed"));
    };
  }

  private static Set<UUID> pointedAt(List<AuditRow> changes) {
    return changes.stream()
        .flatMap(row -> Arrays.stream(row.about))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }
}
