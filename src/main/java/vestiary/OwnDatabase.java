package vestiary;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Locale;

/**
 * A PostgreSQL of the user's own: named in the environment or on the command line. The login that
 * is named owns the tables; the server works as a role that it makes beside it, unless two logins
 * are named.
 */
final class OwnDatabase {

  private static final int TRIES = 15;
  private static final Duration BREATH = Duration.ofSeconds(1);

  private OwnDatabase() {}

  /** Whether one is named. */
  static boolean isNamed() {
    return !named("quarkus.datasource.jdbc.url").isEmpty();
  }

  /**
   * Makes the role that the server works as, and tells Quarkus.
   *
   * @throws SQLException if the database does not answer, though it was waited for
   */
  static void prepare() throws SQLException {
    String user = named("quarkus.datasource.username");
    if (!named("quarkus.flyway.username").isEmpty()) {
      System.setProperty("vestiary.application-role", user);
      return;
    }
    Login owner =
        Login.of(named("quarkus.datasource.jdbc.url"), user, named("quarkus.datasource.password"));
    try (Connection connection = connect(owner)) {
      LimitedRole.prepare(connection, owner)
          .ifPresentOrElse(
              settings -> settings.forEach(System::setProperty),
              () ->
                  System.err.printf(
                      "The login \"%s\" may make no roles in PostgreSQL, so clusters are kept apart by the program alone and not by the database as well. Give it CREATEROLE, or name a second login that owns the tables in QUARKUS_FLYWAY_USERNAME.%n",
                      owner.user()));
    }
  }

  /** One that starts beside us is waited for. */
  private static Connection connect(Login owner) throws SQLException {
    for (int tries = 1; ; tries++) {
      try {
        return owner.connect();
      } catch (SQLException e) {
        if (tries == TRIES || !WhyNotStarted.isNoConnection(e)) {
          throw e;
        }
        rest();
      }
    }
  }

  private static void rest() {
    try {
      Thread.sleep(BREATH.toMillis());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static String named(String setting) {
    String variable = setting.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "_");
    return System.getProperty(setting, System.getenv().getOrDefault(variable, ""));
  }
}
