package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.cluster.ChurchCalendars;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;

/** Loads once what the dates of patterns follow from: calendars and school terms. */
@ApplicationScoped
class ReadPatternDates {

  private final ReadCluster cluster;
  private final ChurchCalendars calendars;
  private final SchoolTermRows terms;

  ReadPatternDates(ReadCluster cluster, ChurchCalendars calendars, SchoolTermRows terms) {
    this.cluster = cluster;
    this.calendars = calendars;
    this.terms = terms;
  }

  PatternDates read() {
    Cluster here = cluster.cluster();
    Map<UUID, LiturgicalCalendar> byChurch =
        cluster.churches().stream()
            .collect(Collectors.toMap(c -> c.id().value(), c -> calendars.of(here, c)));
    return new PatternDates(byChurch, terms.inOrder().stream().map(SchoolTermRow::toTerm).toList());
  }
}
