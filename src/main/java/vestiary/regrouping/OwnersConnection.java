package vestiary.regrouping;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Opens the database as the owner of the tables, who migrates them: what goes from one cluster to
 * another passes the fence between them, which holds the role that the server works as.
 */
@ApplicationScoped
class OwnersConnection {

  private final String url;
  private final String user;
  private final String password;

  OwnersConnection(
      @ConfigProperty(name = "quarkus.datasource.jdbc.url") String workingUrl,
      @ConfigProperty(name = "quarkus.datasource.username") Optional<String> workingUser,
      @ConfigProperty(name = "quarkus.datasource.password") Optional<String> workingPassword,
      @ConfigProperty(name = "quarkus.flyway.jdbc-url") Optional<String> url,
      @ConfigProperty(name = "quarkus.flyway.username") Optional<String> user,
      @ConfigProperty(name = "quarkus.flyway.password") Optional<String> password) {
    this.url = url.orElse(workingUrl);
    this.user = user.or(() -> workingUser).orElse("");
    this.password = password.or(() -> workingPassword).orElse("");
  }

  /** A connection in a transaction, which is given up unless it is committed. */
  Connection open() throws SQLException {
    Connection connection = DriverManager.getConnection(url, user, password);
    connection.setAutoCommit(false);
    return connection;
  }
}
