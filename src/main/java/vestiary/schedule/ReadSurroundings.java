package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.cluster.Church;
import vestiary.cluster.ChurchCalendars;
import vestiary.cluster.Closings;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.vesting.ChurchId;

/** Reads what Masses are held against. */
@ApplicationScoped
class ReadSurroundings {

  private final ReadCluster cluster;
  private final ChurchCalendars calendars;
  private final Closings closings;

  ReadSurroundings(ReadCluster cluster, ChurchCalendars calendars, Closings closings) {
    this.cluster = cluster;
    this.calendars = calendars;
    this.closings = closings;
  }

  /** For one Mass: only what is asked for is read. */
  MassSurroundings forOne() {
    return new ForOne(cluster.cluster());
  }

  /** For many Masses: all is read at once, and stays as it is. */
  MassSurroundings forMany() {
    Cluster here = cluster.cluster();
    Map<String, Church> churches =
        cluster.churches().stream().collect(Collectors.toMap(Church::slug, Function.identity()));
    Map<String, LiturgicalCalendar> kept =
        churches.values().stream()
            .collect(Collectors.toMap(Church::slug, church -> calendars.of(here, church)));
    return new ForMany(here, churches, closings.all(), kept);
  }

  private final class ForOne implements MassSurroundings {
    private final Cluster here;

    private ForOne(Cluster here) {
      this.here = here;
    }

    @Override
    public Cluster cluster() {
      return here;
    }

    @Override
    public Optional<Church> findChurch(String slug) {
      return cluster.findChurch(slug);
    }

    @Override
    public Optional<LocalDate> findClosing(Church church) {
      return closings.find(church.id());
    }

    @Override
    public LiturgicalCalendar calendar(Church church) {
      return calendars.of(here, church);
    }
  }

  private record ForMany(
      Cluster cluster,
      Map<String, Church> churches,
      Map<ChurchId, LocalDate> closings,
      Map<String, LiturgicalCalendar> calendars)
      implements MassSurroundings {

    @Override
    public Optional<Church> findChurch(String slug) {
      return Optional.ofNullable(churches.get(slug));
    }

    @Override
    public Optional<LocalDate> findClosing(Church church) {
      return Optional.ofNullable(closings.get(church.id()));
    }

    @Override
    public LiturgicalCalendar calendar(Church church) {
      return calendars.get(church.slug());
    }
  }
}
