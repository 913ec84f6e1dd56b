package vestiary.cluster;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.Proper;

/**
 * The calendars of churches, kept ready: a calendar computes each year once, and equal settings and
 * propers give equal calendars whichever cluster asks.
 */
@ApplicationScoped
public class ChurchCalendars {

  /** Some twenty clusters' worth; beyond that, all are computed anew rather than kept for ever. */
  private static final int MOST = 300;

  private final Map<Key, LiturgicalCalendar> ready = new ConcurrentHashMap<>();

  /** The calendar that this church keeps. */
  public LiturgicalCalendar of(Cluster cluster, Church church) {
    return of(cluster.calendar(), church.propers());
  }

  /** What all churches of the cluster keep, the days of the diocese included. */
  public LiturgicalCalendar plain(Cluster cluster) {
    return of(cluster.calendar(), cluster.propers());
  }

  /** The calendar of these settings. */
  public LiturgicalCalendar of(CalendarSettings settings, List<Proper> propers) {
    if (ready.size() > MOST) {
      ready.clear();
    }
    return ready.computeIfAbsent(
        new Key(settings, propers), k -> LiturgicalCalendar.of(k.settings(), k.propers()));
  }

  private record Key(CalendarSettings settings, List<Proper> propers) {}
}
