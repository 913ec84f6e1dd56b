package vestiary.proper;

import jakarta.enterprise.context.RequestScoped;
import java.util.List;
import java.util.UUID;
import vestiary.access.CurrentCluster;

/**
 * The propers of the cluster, read once in a request, which asks for its churches many times; anew
 * once it looks into another cluster.
 */
@RequestScoped
class PropersAtHand {

  private final ProperRows rows;
  private final CurrentCluster current;

  // Null until they are asked for.
  private List<EnteredProper> read;
  private UUID readIn;

  PropersAtHand(ProperRows rows, CurrentCluster current) {
    this.rows = rows;
    this.current = current;
  }

  /** All of them, by id. */
  List<EnteredProper> all() {
    if (read == null || !current.id().equals(readIn)) {
      read = rows.entered();
      readIn = current.id();
    }
    return read;
  }

  /** They have been changed and are read anew when they are next asked for. */
  void forget() {
    read = null;
  }
}
