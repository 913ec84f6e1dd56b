package vestiary.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;

/** Forgets when people were away, and why. */
@ApplicationScoped
public class OldAbsences {

  private static final String OLD = "ends < ?1";

  private final AbsenceRows absences;

  OldAbsences(AbsenceRows absences) {
    this.absences = absences;
  }

  /** How many ended before that moment. */
  public long count(Instant before) {
    return absences.count(OLD, before);
  }

  @Transactional
  public void forget(Instant before) {
    absences.delete(OLD, before);
  }
}
