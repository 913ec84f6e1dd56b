package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import vestiary.cluster.Horizon;

/** Empties a schedule, for a demo that is made anew. */
@ApplicationScoped
public class ClearSchedule {

  private final MassRows masses;
  private final PatternRows patterns;
  private final Horizon horizon;

  ClearSchedule(MassRows masses, PatternRows patterns, Horizon horizon) {
    this.masses = masses;
    this.patterns = patterns;
    this.horizon = horizon;
  }

  /** Forgets every pattern and every Mass of the cluster. */
  @Transactional
  public void clear() {
    horizon.lock();
    masses.deleteAll();
    patterns.deleteAll();
    horizon.moveTo(LocalDate.EPOCH);
  }
}
