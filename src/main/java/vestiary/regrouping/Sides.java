package vestiary.regrouping;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import vestiary.problem.Refused;

/**
 * Finds clusters by what whoever keeps the server calls them, and what was done with them before.
 */
@ApplicationScoped
class Sides {

  private final OwnersConnection owner;

  Sides(OwnersConnection owner) {
    this.owner = owner;
  }

  /** The cluster of that word or id, if there is one. */
  Optional<Side> find(String named) {
    return asking(database -> Side.find(database, named.strip()));
  }

  /**
   * The cluster of that word or id.
   *
   * @throws Refused if there is none
   */
  Side get(String named) {
    return find(named)
        .orElseThrow(
            () ->
                CannotRegroup.because(
                    "There is no cluster %s on this server. Clusters are named by the word by which their people sign in.",
                    named));
  }

  /**
   * Whether a cluster has noted that of another.
   *
   * @param kind merged, split-off or split-from
   * @param other its word or id
   */
  boolean isNoted(Side in, String kind, String other) {
    return asking(database -> Noted.isThere(database, in.id(), kind, other.strip()));
  }

  /** Notes that another was made of this one. */
  void noteSplit(Side in, Side made, Path archive) {
    asking(
        database -> {
          Noted.keep(database, in.id(), "split-off", made, archive.getFileName().toString());
          database.connection().commit();
          return made;
        });
  }

  /** A question. */
  private interface Question<T> {
    T to(Questions database) throws SQLException;
  }

  private <T> T asking(Question<T> question) {
    try (Connection connection = owner.open()) {
      return question.to(new Questions(connection));
    } catch (SQLException e) {
      throw new RegroupingFailed(e);
    }
  }
}
