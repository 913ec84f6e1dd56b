package vestiary.access;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;
import java.util.function.Supplier;

/**
 * Looks into another cluster for a moment. What is done there has a transaction of its own, and so
 * a database session of that cluster, which ends with it. Never from within another transaction,
 * which would hold a second connection meanwhile.
 */
@ApplicationScoped
public class Elsewhere {

  private final CurrentCluster current;

  Elsewhere(CurrentCluster current) {
    this.current = current;
  }

  /**
   * What comes of something done there; the present cluster is the current one again afterwards.
   *
   * @param cluster id of one that is there
   */
  public <T> T call(UUID cluster, Supplier<T> work) {
    UUID here = current.id();
    current.assign(cluster);
    try {
      return QuarkusTransaction.requiringNew().call(work::get);
    } finally {
      current.assign(here);
    }
  }
}
