package vestiary.regrouping;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import vestiary.problem.Refused;

/** What keeps two clusters from becoming one. */
final class InTheWay {

  private InTheWay() {}

  /**
   * Looks before a row is moved.
   *
   * @throws Refused with all that meets its like, or with what has to end first
   */
  static void refuse(WholeDatabase whole, Side ended, Side remaining) throws SQLException {
    refuseUnlessAlike(whole.database(), ended, remaining);
    refuseWhatIsUnderWay(whole.database(), ended, remaining);
    refuseClashes(whole, ended, remaining);
  }

  static Refused somebodyWorks() {
    return CannotRegroup.because(
        "Somebody worked on the clusters meanwhile. Stop every other copy of the server, then start again.");
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
}
