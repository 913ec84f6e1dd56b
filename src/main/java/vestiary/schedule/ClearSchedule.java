package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import vestiary.cluster.Closings;
import vestiary.cluster.Horizon;

/** Empties a schedule, for a demo that is made anew. */
@ApplicationScoped
public class ClearSchedule {

  private final MassRows masses;
  private final PatternRows patterns;
  private final Horizon horizon;
  private final Closings closings;

  ClearSchedule(MassRows masses, PatternRows patterns, Horizon horizon, Closings closings) {
    this.closings = closings;
    this.masses = masses;
    this.patterns = patterns;
    this.horizon = horizon;
  }

  /** Forgets every pattern and every Mass of the cluster; what was closed is open. */
  @Transactional
  public void clear() {
    horizon.lock();
    masses.deleteAll();
    patterns.deleteAll();
    closings.openAll();
    horizon.moveTo(LocalDate.EPOCH);
  }
}
