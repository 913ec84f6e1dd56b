package vestiary.access;

import java.util.Optional;
import java.util.UUID;

/**
 * Knows which cluster lets whom look in. This room knows neither users nor clusters, so the feature
 * that does answers.
 */
public interface Oversees {

  /**
   * The user as overseer of another cluster; empty if that lets nobody in by this id. The user's
   * own cluster is the current one when it is asked, and afterwards.
   *
   * @param wanted id of the other cluster, whether or not there is such a one
   */
  Optional<Visitor.Overseer> find(Visitor.User user, UUID wanted);
}
