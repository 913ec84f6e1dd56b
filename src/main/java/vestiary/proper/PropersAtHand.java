package vestiary.proper;

import jakarta.enterprise.context.RequestScoped;
import java.util.List;

/** The propers of the cluster, read once in a request, which asks for its churches many times. */
@RequestScoped
class PropersAtHand {

  private final ProperRows rows;

  // Null until they are asked for.
  private List<EnteredProper> read;

  PropersAtHand(ProperRows rows) {
    this.rows = rows;
  }

  /** All of them, by id. */
  List<EnteredProper> all() {
    if (read == null) {
      read = rows.entered();
    }
    return read;
  }

  /** They have been changed and are read anew when they are next asked for. */
  void forget() {
    read = null;
  }
}
