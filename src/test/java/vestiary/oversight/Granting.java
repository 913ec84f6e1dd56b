package vestiary.oversight;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;
import vestiary.scenario.Scenario;

/** Leaves to look in, given past the pages. */
@ApplicationScoped
public class Granting {

  private final Scenario scenario;
  private final Overseers overseers;

  Granting(Scenario scenario, Overseers overseers) {
    this.scenario = scenario;
    this.overseers = overseers;
  }

  /** Somebody of that other cluster may look into this one. */
  public UUID letIn(UUID cluster, UUID home) {
    return letIn(cluster, home, UUID.randomUUID());
  }

  UUID letIn(UUID cluster, UUID home, UUID user) {
    UUID[] leave = new UUID[1];
    scenario.within(cluster, () -> leave[0] = overseers.enter(home, user));
    return leave[0];
  }
}
