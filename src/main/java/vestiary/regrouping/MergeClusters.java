package vestiary.regrouping;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
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
    return within(database -> report(database, ended, remaining, Path.of("")), false);
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
            throw somebodyWorks();
          }
          return report(database, ended, remaining, archive);
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

  private static Report report(Questions database, Side ended, Side remaining, Path archive)
      throws SQLException {
    WholeDatabase whole = WholeDatabase.hold(database);
    refuseUnlessAlike(database, ended, remaining);
    refuseWhatIsUnderWay(database, ended, remaining);
    refuseClashes(whole, ended, remaining);
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

  private static void refuseUnlessAlike(Questions database, Side ended, Side remaining)
      throws SQLException {
    if (database
                .texts(
                    "select word from cluster where cluster_id in (?, ?)",
                    ended.id(),
                    remaining.id())
                .size()
            < 2
        && !ended.id().equals(remaining.id())) {
      throw somebodyWorks();
    }
    if (ended.id().equals(remaining.id())) {
      throw CannotRegroup.because("%s cannot be merged into itself. Name two clusters.", ended);
    }
    if (!ended.zone().equals(remaining.zone())) {
      throw CannotRegroup.because(
          "The clocks of the two clusters are not the same (%s, %s), and Masses would be told at another hour. Set one time zone in the settings of both first.",
          ended.zone(), remaining.zone());
    }
    if (!ended.calendar().equals(remaining.calendar())) {
      throw CannotRegroup.because(
          "The two clusters keep the calendars of different countries (%s, %s). Set one in the settings of both first.",
          ended.calendar(), remaining.calendar());
    }
    if (ended.isDemo() != remaining.isDemo()) {
      throw CannotRegroup.because(
          "One of the two is the demo, and invented people would come among your own.");
    }
  }

  private static void refuseWhatIsUnderWay(Questions database, Side ended, Side remaining)
      throws SQLException {
    if (database.isTrue(
        "select exists (select 1 from scheduled_tasks where position(convert_to(?, 'UTF8') in task_data) > 0)",
        ended.id().toString())) {
      throw CannotRegroup.because(
          "A plan or a list of %s is being worked out. Start the server without VESTIARY_MERGE, let it end, then start again.",
          ended);
    }
    if (database.isTrue(
        """
        select exists (select 1 from lending
          where state in ('offered', 'accepted')
            and (cluster_id, borrower_id) in ((?::uuid, ?::uuid), (?::uuid, ?::uuid)))
        """,
        ended.id(),
        remaining.id(),
        remaining.id(),
        ended.id())) {
      throw CannotRegroup.because(
          "The two clusters have lent each other vestments, or have offered to. Say first that they are back, or withdraw the offer.");
    }
  }

  private static void refuseClashes(WholeDatabase whole, Side ended, Side remaining)
      throws SQLException {
    List<UniqueKey> keys =
        whole.keys().stream()
            .filter(key -> !key.isOneToACluster())
            .filter(key -> !MeetingRules.ONE_IS_ENOUGH.containsKey(key.table()))
            .filter(key -> !key.compared().contains(MeetingRules.TURN))
            .toList();
    List<String> clashes =
        new ArrayList<>(Clashes.between(whole.database(), keys, ended.id(), remaining.id()));
    if (!clashes.isEmpty()) {
      throw CannotRegroup.because(
          "%s cannot be merged into %s as yet. %s. Change each in one of the two first.",
          ended, remaining, String.join(". ", clashes));
    }
  }

  private static String reached(Questions database, Side side) throws SQLException {
    return database
        .texts("select unfolded_until::text from cluster where cluster_id = ?", side.id())
        .get(0);
  }

  private static Refused somebodyWorks() {
    return CannotRegroup.because(
        "Somebody worked on the clusters meanwhile. Stop every other copy of the server, then start again.");
  }
}
