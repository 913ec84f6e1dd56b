package vestiary.telling;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;

/** Tells nobody what is no news to them. */
@ApplicationScoped
public class KeepSilent {

  private final MassChangeRows changes;

  KeepSilent(MassChangeRows changes) {
    this.changes = changes;
  }

  /** Forgets what has changed in Masses of the present cluster and was not told as yet. */
  @Transactional
  public void onMasses() {
    changes.flush();
    changes.deleteAll();
  }
}
