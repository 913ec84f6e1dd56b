package vestiary.scenario;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * The database as its owner sees it, past the fences between clusters: for tests that look whether
 * these hold, or change what no request could.
 */
@ApplicationScoped
public class OwnerDatabase {

  private final String url;
  private final String user;
  private final String password;

  OwnerDatabase(
      @ConfigProperty(name = "quarkus.flyway.jdbc-url") String url,
      @ConfigProperty(name = "quarkus.flyway.username") String user,
      @ConfigProperty(name = "quarkus.flyway.password") String password) {
    this.url = url;
    this.user = user;
    this.password = password;
  }

  public Connection getConnection() throws SQLException {
    return DriverManager.getConnection(url, user, password);
  }
}
