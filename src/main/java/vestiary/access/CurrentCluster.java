package vestiary.access;

import jakarta.enterprise.context.RequestScoped;
import java.util.Optional;
import java.util.UUID;

/**
 * The cluster whose rows the present request, job or test sees. It is set before the first row is
 * read, since a database session keeps the cluster that it was opened for.
 */
@RequestScoped
public class CurrentCluster {

  // Reached through methods alone: a field of a request-scoped bean read from outside is the
  // proxy's own, one value for the whole server.
  private UUID id;

  /**
   * The cluster's id.
   *
   * @throws IllegalStateException if none was set: a bug of ours, never a user's
   */
  public UUID id() {
    if (id == null) {
      throw new IllegalStateException("no cluster was set before rows were read");
    }
    return id;
  }

  /** The cluster's id, or empty while none is set. */
  Optional<UUID> find() {
    return Optional.ofNullable(id);
  }

  /** Whether none is set yet. */
  public boolean isUnknown() {
    return id == null;
  }

  /** Says whose rows are seen from now on. */
  public void assign(UUID cluster) {
    id = cluster;
  }
}
