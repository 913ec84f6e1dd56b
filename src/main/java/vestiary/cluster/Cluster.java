package vestiary.cluster;

import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.Proper;

/**
 * Parishes that share priests and vestments.
 *
 * @param propers what all its churches keep beside that calendar: the days of the diocese
 * @param languages of the people, the first is the one used unless another is asked for
 * @param isSetUp whether somebody has said what the cluster is called and which calendar it keeps
 * @param version counts the changes made to its settings, to notice a lost race
 */
public record Cluster(
    UUID id,
    String name,
    CalendarSettings calendar,
    List<Proper> propers,
    ZoneId zone,
    List<Locale> languages,
    Policies policies,
    boolean isSetUp,
    int version) {

  public Cluster {
    propers = List.copyOf(propers);
    languages = List.copyOf(languages);
  }

  /** The language used unless another is asked for. */
  public Locale language() {
    return languages.get(0);
  }
}
