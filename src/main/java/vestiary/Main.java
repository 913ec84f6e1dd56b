package vestiary;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.sql.SQLException;
import org.jboss.logging.Logger;

/**
 * Starts the server: on the database it is told to use, or else on the PostgreSQL that comes along,
 * with its data in one folder that is kept between starts.
 */
@QuarkusMain
public final class Main {

  private Main() {}

  /**
   * Runs until the process is stopped.
   *
   * @param arguments {@code --demo=true|false} says whether an empty database is filled with the
   *     demo cluster, like the environment's {@code VESTIARY_DEMO}; other words are handed on
   */
  public static void main(String... arguments) {
    for (String argument : arguments) {
      if (argument.startsWith("--demo=")) {
        System.setProperty("vestiary.demo", argument.substring("--demo=".length()));
      }
    }
    try {
      if (OwnDatabase.isNamed()) {
        OwnDatabase.prepare();
      } else {
        LocalDatabase.start(DataFolder.fromEnvironment());
      }
    } catch (DataFolder.InUse | LocalDatabase.NotStarted refusal) {
      System.err.println(refusal.getMessage());
      System.exit(1);
    } catch (SQLException failure) {
      end(1, failure);
    }
    Quarkus.run(null, Main::end, arguments);
  }

  /** Ends the process, and with it the PostgreSQL that came along. */
  private static void end(int code, Throwable fault) {
    if (fault != null) {
      WhyNotStarted.find(fault)
          .ifPresentOrElse(
              System.err::println,
              () -> Logger.getLogger("vestiary").error("Vestiary did not start.", fault));
    }
    System.exit(code);
  }
}
