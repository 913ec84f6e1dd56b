package vestiary.times;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * What somebody wants to see of the Mass times.
 *
 * @param church short name; empty for all
 * @param language BCP 47; empty for that of the cluster
 * @param cluster word of the cluster, which its links carry on; may be empty
 * @param week any date of it as typed; empty for the present one
 */
record TimesAsked(String church, String language, String cluster, String week) {

  TimesAsked inWeek(String date) {
    return new TimesAsked(church, language, cluster, date);
  }

  TimesAsked of(String other) {
    return new TimesAsked(other, language, cluster, week);
  }

  TimesAsked in(String other) {
    return new TimesAsked(church, other, cluster, week);
  }

  /** That path with all of it. */
  String at(String path) {
    List<String> query = new ArrayList<>();
    add(query, "cluster", cluster);
    add(query, "church", church);
    add(query, "lang", language);
    add(query, "week", week);
    return query.isEmpty() ? path : path + "?" + String.join("&", query);
  }

  private static void add(List<String> query, String name, String value) {
    if (!value.isEmpty()) {
      query.add(name + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8));
    }
  }
}
