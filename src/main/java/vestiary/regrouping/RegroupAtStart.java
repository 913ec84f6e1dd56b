package vestiary.regrouping;

import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/**
 * What whoever keeps the server asks for in its environment, before the first page is answered. A
 * second start with the same words does nothing.
 */
@ApplicationScoped
class RegroupAtStart {

  private static final Logger LOG = Logger.getLogger("vestiary");

  private final MergeAtStart merge;
  private final SplitAtStart split;
  private final Optional<String> merging;
  private final Optional<String> splitting;
  private final boolean isTrial;

  RegroupAtStart(
      MergeAtStart merge,
      SplitAtStart split,
      @ConfigProperty(name = "vestiary.merge") Optional<String> merging,
      @ConfigProperty(name = "vestiary.split") Optional<String> splitting,
      @ConfigProperty(name = "vestiary.regrouping.trial", defaultValue = "false") boolean isTrial) {
    this.merge = merge;
    this.split = split;
    this.merging = merging;
    this.splitting = splitting;
    this.isTrial = isTrial;
  }

  /** After the first cluster was opened, and before anybody asks for one. */
  void regroup(@Observes @Priority(3000) StartupEvent start) {
    merging.ifPresent(named -> merge.merge(named, isTrial).forEach(LOG::info));
    splitting.ifPresent(named -> split.split(named, isTrial).forEach(LOG::info));
  }
}
