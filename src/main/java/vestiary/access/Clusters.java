package vestiary.access;

import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * Which clusters there are on this server, for requests that have none yet, and what another one is
 * called. Read past Hibernate, because opening a session already asks for the cluster; within a
 * transaction on its own connection.
 */
@ApplicationScoped
public class Clusters {

  /** Words are short; what is longer is not looked for. */
  private static final int LONGEST = 40;

  private final AgroalDataSource database;

  Clusters(AgroalDataSource database) {
    this.database = database;
  }

  /**
   * What other clusters see of one.
   *
   * @param word by which it is named
   */
  public record Named(UUID id, String name, String word) {}

  /** What a cluster is called; its id is known, so it is there. */
  public Named named(UUID id) {
    return ask(
            "select name, word from cluster_called(?::uuid)",
            found -> new Named(id, found.getString(1), found.getString(2)),
            id.toString())
        .get(0);
  }

  /** What somebody of another cluster is called; empty if nobody of that id is let in there. */
  public Optional<String> userNamed(UUID cluster, UUID user) {
    return ask(
            "select coalesce(user_called(?::uuid, ?::uuid), '')",
            found -> found.getString(1),
            cluster.toString(),
            user.toString())
        .stream()
        .filter(name -> !name.isEmpty())
        .findFirst();
  }

  /** The cluster that has this word, or this id; empty if none does. */
  public Optional<UUID> find(String named) {
    String said = named.strip();
    boolean couldBe = !said.isEmpty() && said.length() <= LONGEST && said.indexOf('\0') < 0;
    return couldBe ? ids("select find_cluster(?)", said).stream().findFirst() : Optional.empty();
  }

  /** The invented ones, the first of them first; none on a server that is no demo. */
  public List<UUID> demos() {
    return ids("select demo_clusters()");
  }

  /** Whether the server has more than one, so that people must say which is theirs. */
  public boolean areSeveral() {
    return ask("select has_several_clusters()", found -> found.getBoolean(1)).get(0);
  }

  private List<UUID> ids(String query, String... values) {
    return ask(query, found -> found.getObject(1, UUID.class), values).stream()
        .flatMap(id -> Optional.ofNullable(id).stream())
        .toList();
  }

  private interface Reading<T> {
    T read(ResultSet found) throws SQLException;
  }

  private <T> List<T> ask(String query, Reading<T> reading, String... values) {
    try (Connection connection = database.getConnection();
        PreparedStatement statement = connection.prepareStatement(query)) {
      for (int i = 0; i < values.length; i++) {
        statement.setString(i + 1, values[i]);
      }
      List<T> all = new ArrayList<>();
      try (ResultSet found = statement.executeQuery()) {
        while (found.next()) {
          all.add(reading.read(found));
        }
      }
      return all;
    } catch (SQLException e) {
      throw new Unread(e);
    }
  }

  private static final class Unread extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Unread(SQLException cause) {
      super(cause);
    }
  }
}
