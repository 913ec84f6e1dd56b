package vestiary.allocation.remedy;

import java.util.List;
import java.util.stream.IntStream;
import vestiary.allocation.plan.Score;

/**
 * What a remedy costs: by how much each number of a score grows with it. Less than zero is a gain.
 *
 * @param unmet needs that nothing lawful serves: of principal celebrants, others that must be met,
 *     and all others; against the days as they are
 * @param steps persons with a substitute, the deepest step first; like all that follows against the
 *     days without those who are short
 * @param carriages journeys made for vestments alone
 * @param minutes driven on these
 * @param preferences how far grade, suit, size and shade fall short, weighted
 * @param changes needs served otherwise than planned
 */
public record Cost(
    List<Long> unmet,
    List<Long> steps,
    long carriages,
    long minutes,
    long preferences,
    long changes) {

  public Cost {
    unmet = List.copyOf(unmet);
    steps = List.copyOf(steps);
  }

  /**
   * From the days as they are and the days without those who are short to the days with the remedy.
   */
  static Cost between(Score asIs, Score withoutShort, Score after) {
    return new Cost(
        difference(after.unmet(), asIs.unmet()),
        difference(after.steps(), withoutShort.steps()),
        after.carriages() - withoutShort.carriages(),
        after.minutes() - withoutShort.minutes(),
        after.preferences() - withoutShort.preferences(),
        after.changes() - withoutShort.changes());
  }

  private static List<Long> difference(List<Long> after, List<Long> before) {
    return IntStream.range(0, after.size()).mapToObj(at -> after.get(at) - before.get(at)).toList();
  }
}
