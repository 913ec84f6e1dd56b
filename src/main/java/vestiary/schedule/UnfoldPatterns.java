package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import vestiary.cluster.Horizon;
import vestiary.cluster.ReadCluster;

/**
 * Makes patterns yield their Masses, some time ahead of whoever looks. A Mass is made once and
 * never again: what people did with it afterwards stands.
 */
@ApplicationScoped
public class UnfoldPatterns {

  /** Patterns reach this far ahead and no farther: nobody fixes Mass times for longer. */
  private static final int MOST_YEARS_AHEAD = 3;

  /** A pattern may have begun long ago; Masses long past are of no use to anybody. */
  private static final int MOST_DAYS_BACK = 60;

  private static final int DAYS_AT_A_TIME = 60;

  private final PatternRows patterns;
  private final MassRows masses;
  private final Horizon horizon;
  private final ReadCluster cluster;
  private final ReadPatternDates readDates;
  private final Clock clock;

  UnfoldPatterns(
      PatternRows patterns,
      MassRows masses,
      Horizon horizon,
      ReadCluster cluster,
      ReadPatternDates readDates,
      Clock clock) {
    this.readDates = readDates;
    this.patterns = patterns;
    this.masses = masses;
    this.horizon = horizon;
    this.cluster = cluster;
    this.clock = clock;
  }

  /** Sees to it that all Masses up to that date are there, as far as patterns reach. */
  @Transactional
  void until(LocalDate date) {
    ZoneId zone = cluster.cluster().zone();
    LocalDate wanted = earlier(date, farthest(zone));
    if (!horizon.date().isBefore(wanted)) {
      return;
    }
    // Two readers at once: the second waits here, then finds the work done.
    LocalDate done = horizon.lock();
    if (done.isBefore(wanted)) {
      LocalDate target = earlier(wanted.plusDays(DAYS_AT_A_TIME), farthest(zone));
      PatternDates dates = readDates.read();
      patterns.listAll().forEach(p -> unfold(p, dates, done.plusDays(1), target, zone));
      horizon.moveTo(target);
    }
  }

  /** Sees to it that all Masses up to that date are there, and yields none beyond it. */
  @Transactional
  public void exactlyUntil(LocalDate date) {
    LocalDate done = horizon.lock();
    if (done.isBefore(date)) {
      PatternDates dates = readDates.read();
      ZoneId zone = cluster.cluster().zone();
      patterns.listAll().forEach(p -> unfold(p, dates, done.plusDays(1), date, zone));
      horizon.moveTo(date);
    }
  }

  /** Makes a new pattern catch up with the others. */
  @Transactional
  void unfold(PatternRow pattern) {
    LocalDate done = horizon.lock();
    ZoneId zone = cluster.cluster().zone();
    unfold(pattern, readDates.read(), LocalDate.EPOCH, done, zone);
  }

  /** Makes a pattern catch up with the others from the day after that date. */
  @Transactional
  void unfold(PatternRow pattern, LocalDate after) {
    LocalDate done = horizon.lock();
    unfold(pattern, readDates.read(), after.plusDays(1), done, cluster.cluster().zone());
  }

  private void unfold(
      PatternRow pattern, PatternDates dates, LocalDate first, LocalDate last, ZoneId zone) {
    LocalDate from = later(first, today(zone).minusDays(MOST_DAYS_BACK));
    dates.between(pattern, from, last).forEach(date -> masses.persist(pattern.on(date, zone)));
  }

  private LocalDate farthest(ZoneId zone) {
    return today(zone).plusYears(MOST_YEARS_AHEAD);
  }

  private LocalDate today(ZoneId zone) {
    return LocalDate.now(clock.withZone(zone));
  }

  private static LocalDate later(LocalDate a, LocalDate b) {
    return a.isAfter(b) ? a : b;
  }

  private static LocalDate earlier(LocalDate a, LocalDate b) {
    return a.isBefore(b) ? a : b;
  }
}
