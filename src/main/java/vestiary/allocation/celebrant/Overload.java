package vestiary.allocation.celebrant;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What one person is named for and cannot do: two liturgies that he cannot both serve, and more
 * Masses on a counted day than he may or will celebrate.
 *
 * @param both in the order of the first, then of the second
 * @param tooMany by day; each names the last Mass of that day as the one too many
 */
public record Overload(List<Both> both, List<WhyNot.TooMany> tooMany) {

  public Overload {
    both = List.copyOf(both);
    tooMany = List.copyOf(tooMany);
  }

  /**
   * Two liturgies.
   *
   * @param first that which begins first
   * @param why he cannot be at the second
   */
  public record Both(Stay first, Stay second, WhyNot why) {

    /** Whether the second begins before the first has ended. */
    public boolean overlap() {
      return second.start().isBefore(first.end());
    }
  }

  /**
   * Of one person.
   *
   * @param named all that he is named for, each liturgy once; he himself need be none of the
   *     priests of the question
   */
  public static Overload of(Question question, Priest person, List<Engagement> named) {
    List<Engagement> sorted =
        named.stream()
            .sorted(
                Comparator.comparing((Engagement one) -> one.stay().start())
                    .thenComparing(one -> one.stay().mass()))
            .toList();
    return new Overload(both(question, sorted), tooMany(question, person, sorted));
  }

  private static List<Both> both(Question question, List<Engagement> sorted) {
    Apart apart = new Apart(question);
    List<Both> both = new ArrayList<>();
    for (int one = 0; one < sorted.size(); one++) {
      Stay first = sorted.get(one).stay();
      for (int two = one + 1; two < sorted.size(); two++) {
        Stay second = sorted.get(two).stay();
        if (!second.start().isBefore(first.end().plus(Pace.A_DAY))) {
          break;
        }
        apart.find(first, second).ifPresent(why -> both.add(new Both(first, second, why)));
      }
    }
    return both;
  }

  private static List<WhyNot.TooMany> tooMany(
      Question question, Priest person, List<Engagement> sorted) {
    Timetable his = Timetable.asNamed(question, person, sorted);
    Map<CountedDay, Engagement> last =
        sorted.stream()
            .filter(Engagement::counts)
            .collect(
                Collectors.toMap(
                    Engagement::day, one -> one, (earlier, later) -> later, TreeMap::new));
    return last.values().stream()
        .flatMap(one -> his.findTooMany(one.stay().mass(), one.day()).stream())
        .toList();
  }
}
