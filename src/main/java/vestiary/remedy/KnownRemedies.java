package vestiary.remedy;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import vestiary.allocation.planner.Planner;
import vestiary.allocation.remedy.Remedies;
import vestiary.allocation.remedy.Remedy;

/**
 * Asks the core, and remembers the last answers by all that decides them: a question in which
 * anything is different is another question, so that no answer is ever out of date.
 */
@ApplicationScoped
class KnownRemedies {

  /** A few fortnights of a few clusters. */
  private static final int MOST = 300;

  private final Map<RemedyQuestion.Key, List<Remedy>> known =
      Collections.synchronizedMap(
          new LinkedHashMap<>(MOST, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<RemedyQuestion.Key, List<Remedy>> one) {
              return size() > MOST;
            }
          });

  List<Remedy> of(RemedyQuestion question) {
    RemedyQuestion.Key key = question.key();
    List<Remedy> found = known.get(key);
    if (found == null) {
      // Two who ask the same at once both work it out, and get the same.
      found =
          new Remedies(Planner.onThisMachine())
              .find(question.shortage(), question.situation(), question.leeway());
      known.put(key, found);
    }
    return found;
  }
}
