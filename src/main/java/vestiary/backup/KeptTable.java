package vestiary.backup;

import java.util.List;
import java.util.Set;

/**
 * A table with rows of clusters.
 *
 * @param columns those that are stored and not derived, by name
 * @param key columns of its primary key, in order
 * @param pointsTo tables whose rows its rows name, itself among them where one names another
 */
public record KeptTable(String name, List<String> columns, List<String> key, Set<String> pointsTo) {

  public KeptTable {
    columns = List.copyOf(columns);
    key = List.copyOf(key);
    pointsTo = Set.copyOf(pointsTo);
  }

  boolean pointsToItself() {
    return pointsTo.contains(name);
  }
}
