package vestiary.regrouping;

import java.util.Map;
import java.util.Set;
import vestiary.backup.KeptTable;

/**
 * What becomes of rows that cannot simply go over to another cluster. Whatever is not named here
 * goes over as it is, and is refused where it meets its like.
 */
final class MeetingRules {

  /** The cluster itself, whose settings stay those of the one that remains. */
  static final String CLUSTER = "cluster";

  /** How signed weeks and published Mass times are counted. */
  static final String TURN = "turn";

  /** What goes over though no backup holds it: letters leave once, from wherever they wait. */
  private static final Set<String> GOES_ALONG = Set.of("letter");

  /** Ways in that name the cluster in the secret, or were given for that cluster alone. */
  private static final Set<String> ENDS = Set.of("user_passkey");

  /** One row is as good as two that say the same, each with the reason. */
  static final Map<String, String> ONE_IS_ENOUGH =
      Map.of(
          "tidying", "that the night of that day was tidied",
          "week_told", "that the letters of that day were written",
          "sacristy_change", "that something was changed in that moment",
          "printed_label", "that a label with that code was printed: one of the two has the code");

  /** Columns that name another cluster beside the one that the row is of. */
  static final Map<String, Set<String>> OTHER_CLUSTERS =
      Map.of("lending", Set.of("borrower_id", "ended_by"), "oversight", Set.of("home_id"));

  private MeetingRules() {}

  /**
   * Whether rows of that table end with their cluster.
   *
   * @param isKept whether a backup holds them
   */
  static boolean ends(KeptTable table, boolean isKept) {
    return ENDS.contains(table.name()) || !isKept && !GOES_ALONG.contains(table.name());
  }
}
