package vestiary.regrouping;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** What both clusters have and one cluster can have only once, in words people use. */
final class Clashes {

  /** More of one kind are not named, since nobody reads on. */
  static final int MOST_NAMED = 20;

  private static final Map<String, String> WORDS =
      Map.ofEntries(
          Map.entry("parish_name_once", "a parish called %s"),
          Map.entry("church_slug_once", "a church with the short name %s"),
          Map.entry("person_slug_once", "somebody with the short name %s"),
          Map.entry("piece_code_once", "a piece %s"),
          Map.entry("set_code_once", "a set %s"),
          Map.entry("suit_name_once", "a suit called %s"),
          Map.entry("proper_slug_once", "a day of their own with the short name %s"),
          Map.entry("proper_of_all_once", "the day of their own %s for all churches"),
          Map.entry("proper_place_once", "a day of their own in the place %s"),
          Map.entry("school_term_once", "a school term called %s"),
          Map.entry("user_login_once", "a user who signs in as %s"),
          Map.entry("user_outside_once", "a user of the same account with another service (%s)"),
          Map.entry("mass_origin_once", "a Mass from the same event of a calendar (%s)"),
          Map.entry("letter_once", "a letter about the same (%s)"));

  private Clashes() {}

  /** One sentence for each; empty if nothing stands in the way. */
  static List<String> between(Questions database, List<UniqueKey> keys, UUID ended, UUID remaining)
      throws SQLException {
    List<String> sentences = new ArrayList<>();
    for (UniqueKey key : keys) {
      List<String> meetings = key.meetings(database, ended, remaining);
      if (!meetings.isEmpty() && key.isPrimary()) {
        return List.of(
            "Rows of both clusters have the same ids (%s): one began as a copy of the other, and such two cannot become one"
                .formatted(key.table()));
      }
      if (!meetings.isEmpty()) {
        sentences.add("Both clusters have " + called(key).formatted(named(meetings)));
      }
    }
    return sentences;
  }

  private static String named(List<String> meetings) {
    return meetings.size() <= MOST_NAMED
        ? String.join("; ", meetings)
        : String.join("; ", meetings.subList(0, MOST_NAMED)) + " and more";
  }

  private static String called(UniqueKey key) {
    return WORDS.getOrDefault(
        key.name(), key.table().replace('_', ' ').replace("%", "%%") + " with the same %s");
  }
}
