package vestiary.regrouping;

import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/**
 * One of the clusters.
 *
 * @param zone IANA name of its time zone
 * @param calendar of the Church or a country, by its term
 * @param reached last date for which its patterns have yielded their Masses
 */
record Side(
    UUID id,
    String name,
    String word,
    String zone,
    String calendar,
    boolean isDemo,
    LocalDate reached) {

  /** The cluster of that word or id, if there is one. */
  static Optional<Side> find(Questions database, String named) throws SQLException {
    return database
        .ask(
            """
            select cluster_id, name, word, time_zone, calendar, demo_monday is not null, unfolded_until
            from cluster where cluster_id = find_cluster(?)
            """,
            found ->
                new Side(
                    found.getObject(1, UUID.class),
                    found.getString(2),
                    found.getString(3),
                    found.getString(4),
                    found.getString(5),
                    found.getBoolean(6),
                    found.getObject(7, LocalDate.class)),
            named)
        .stream()
        .findFirst();
  }

  @Override
  public String toString() {
    return "%s (%s)".formatted(name, word);
  }
}
