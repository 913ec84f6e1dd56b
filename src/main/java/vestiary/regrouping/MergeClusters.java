package vestiary.regrouping;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import vestiary.problem.Refused;

/**
 * Makes two clusters one, in one transaction, whole or not at all: every row of the one that ends
 * becomes the other's, under the id that it has, with its history.
 */
@ApplicationScoped
class MergeClusters {

  /** Integrity errors. Source: PostgreSQL documentation, appendix A, class 23. */
  private static final String UNFIT = "23";

  private final OwnersConnection owner;

  MergeClusters(OwnersConnection owner) {
    this.owner = owner;
  }

  /** What would happen, found by doing it and giving it up. */
  Report attempt(Side ended, Side remaining) {
    return within(database -> move(database, ended, remaining, Path.of("")), false);
  }

  /**
   * Merges them.
   *
   * @param archive where the one that ends lies as it was
   * @throws Refused if both have what one cluster can have only once, with all of it, or if
   *     something has to end first
   */
  Report merge(Side ended, Side remaining, Path archive) {
    return within(
        database -> {
          if (!reached(database, ended).equals(reached(database, remaining))) {
            throw InTheWay.somebodyWorks();
          }
          return move(database, ended, remaining, archive);
        },
        true);
  }

  /** Work in the transaction. */
  private interface Work {
    Report in(Questions database) throws SQLException;
  }

  private Report within(Work work, boolean stays) {
    try (Connection connection = owner.open()) {
      try {
        Report report = work.in(new Questions(connection));
        if (stays) {
          connection.commit();
        }
        return report;
      } finally {
        // Gives up what was not committed, and nothing else.
        connection.rollback();
      }
    } catch (SQLException e) {
      if (String.valueOf(e.getSQLState()).startsWith(UNFIT)) {
        throw CannotRegroup.because(
            "Rows of the two clusters do not fit together (%s).",
            e.getMessage().lines().findFirst().orElse(""));
      }
      throw new RegroupingFailed(e);
    }
  }

  private static Report move(Questions database, Side ended, Side remaining, Path archive)
      throws SQLException {
    WholeDatabase whole = WholeDatabase.hold(database);
    InTheWay.refuse(whole, ended, remaining);
    int daysOfTheirOwn =
        database
            .texts("select id::text from proper where cluster_id = ? and everywhere", ended.id())
            .size();
    EndedSettings settings = new EndedSettings(whole, ended, remaining);
    List<String> differences = settings.differences();
    settings.note();
    MoveRows.Moved moved = new MoveRows(whole, ended.id(), remaining.id()).move();
    Noted.keep(database, remaining.id(), "merged", ended, archive.getFileName().toString());
    return new Report(ended, remaining, moved, differences, daysOfTheirOwn, archive);
  }

  private static String reached(Questions database, Side side) throws SQLException {
    return database
        .texts("select unfolded_until::text from cluster where cluster_id = ?", side.id())
        .get(0);
  }
}
