package vestiary.allocation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import vestiary.vesting.Need;

/**
 * Cuts needs where a night lies between them that is longer than every journey: whatever serves the
 * one evening can serve any need of the next morning, so each part can be looked at by itself.
 */
final class Nights {

  private Nights() {}

  /**
   * The parts by time, each in the order given. One part only where some church cannot be reached
   * from another, since then no night is long enough.
   */
  static List<List<Need>> part(List<Need> needs, Journeys journeys) {
    boolean allReached =
        journeys.areComplete()
            && needs.stream().allMatch(need -> journeys.place(need.church()) >= 0);
    if (!allReached) {
      return List.of(needs);
    }
    List<Long> mornings = mornings(needs, journeys.longest());
    List<List<Need>> parts = new ArrayList<>();
    mornings.forEach(morning -> parts.add(new ArrayList<>()));
    for (Need need : needs) {
      parts.get(part(mornings, Seconds.floor(need.window().setOut()))).add(need);
    }
    return parts;
  }

  /** The first set-outs of the parts, in ascending order. */
  private static List<Long> mornings(List<Need> needs, long longest) {
    List<Long> mornings = new ArrayList<>();
    long free = Long.MIN_VALUE;
    for (Need need :
        needs.stream().sorted(Comparator.comparing(n -> n.window().setOut())).toList()) {
      long setOut = Seconds.floor(need.window().setOut());
      if (mornings.isEmpty() || free + longest <= setOut) {
        mornings.add(setOut);
      }
      free = Math.max(free, Seconds.ceiling(need.window().cleared()));
    }
    return mornings;
  }

  private static int part(List<Long> mornings, long setOut) {
    int part = mornings.size() - 1;
    while (mornings.get(part) > setOut) {
      part--;
    }
    return part;
  }
}
