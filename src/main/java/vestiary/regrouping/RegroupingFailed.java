package vestiary.regrouping;

import java.sql.SQLException;

/** The database did not do what regrouping asks of it. */
final class RegroupingFailed extends RuntimeException {

  private static final long serialVersionUID = 1L;

  RegroupingFailed(SQLException cause) {
    super(cause);
  }
}
