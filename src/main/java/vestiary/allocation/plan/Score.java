package vestiary.allocation.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * How good a plan is, or at best could be: compared from the first number to the last, less being
 * better.
 *
 * @param unmet needs that nothing lawful serves: of principal celebrants, others that must be met,
 *     and all others
 * @param steps persons with a substitute, the deepest step first
 * @param carriages journeys made for vestments alone
 * @param minutes driven on these
 * @param preferences how far whole sets, grade, suit, size, shade and owners' leave fall short and
 *     how much rides, weighted as in {@link Displeasure}
 * @param changes needs served by another piece than in the last plan, name by name
 */
public record Score(
    List<Long> unmet,
    List<Long> steps,
    long carriages,
    long minutes,
    long preferences,
    long changes)
    implements Comparable<Score> {

  public Score {
    unmet = List.copyOf(unmet);
    steps = List.copyOf(steps);
  }

  @Override
  public int compareTo(Score other) {
    List<Long> mine = numbers();
    List<Long> theirs = other.numbers();
    for (int tier = 0; tier < Math.min(mine.size(), theirs.size()); tier++) {
      int order = Long.compare(mine.get(tier), theirs.get(tier));
      if (order != 0) {
        return order;
      }
    }
    return 0;
  }

  /** Whether the first two tiers, what is unmet and what is substituted, are the same. */
  public boolean coversLike(Score other) {
    return unmet.equals(other.unmet) && steps.equals(other.steps);
  }

  private List<Long> numbers() {
    List<Long> numbers = new ArrayList<>(unmet);
    numbers.addAll(steps);
    numbers.addAll(List.of(carriages, minutes, preferences, changes));
    return numbers;
  }
}
