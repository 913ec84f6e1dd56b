package vestiary.schedule;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Collection;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.cluster.ReadCluster;
import vestiary.web.Speech;

/** What Masses are called where there is one line for them, and nothing of the calendar. */
@ApplicationScoped
public class MassNames {

  private final MassRows masses;
  private final ReadCluster cluster;

  MassNames(MassRows masses, ReadCluster cluster) {
    this.masses = masses;
    this.cluster = cluster;
  }

  /**
   * For example "at Saint Anne, 8 December 2026, 18:30", by id.
   *
   * @param ids those of other things among them are left out
   */
  public Map<UUID, String> of(Collection<UUID> ids, ZoneId zone) {
    Map<UUID, String> churches =
        cluster.churches().stream().collect(Collectors.toMap(c -> c.id().value(), c -> c.name()));
    return masses.list("id in ?1", ids).stream()
        .collect(Collectors.toMap(m -> m.id, m -> name(m, churches.get(m.churchId), zone)));
  }

  private static String name(MassRow mass, String church, ZoneId zone) {
    ZonedDateTime start = mass.starts.atZone(zone);
    return say(
        "at %s, %s, %s", church, Speech.dateAndYear(start.toLocalDate()), Speech.clock(start));
  }
}
