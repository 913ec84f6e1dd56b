package vestiary.backup;

import java.sql.SQLException;

/** The database did not do what a backup asks of it. */
final class BackupFailed extends RuntimeException {

  private static final long serialVersionUID = 1L;

  BackupFailed(SQLException cause) {
    super(cause);
  }
}
