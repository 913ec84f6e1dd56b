package vestiary.allocation;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import vestiary.vesting.Need;
import vestiary.vesting.Role;

/**
 * Which needs of a finding go without, so that those who weigh most are served: principal
 * celebrants first, then the newly ordained, ministers, deacons, concelebrants and lay ministers;
 * among like ones where a piece is at home, then the earlier Mass, then canonical order. Common
 * practice, no source.
 */
final class Unserved {

  private static final List<Role> ORDER =
      List.of(
          Role.PRINCIPAL,
          Role.NEW_PRIEST,
          Role.NEW_DEACON,
          Role.MINISTER,
          Role.DEACON,
          Role.CONCELEBRANT,
          Role.ACOLYTE,
          Role.READER,
          Role.SERVER,
          Role.OTHER,
          Role.DECEASED);

  private Unserved() {}

  /**
   * Those who go without, in ascending order: of needs that all clash as many as there are pieces
   * too few, since each piece serves but one of them; else one.
   *
   * @param serving for each need, the pieces that serve it
   * @param atHome for each need, those of its own church
   */
  static List<Integer> of(
      ShortSet set, List<Need> needs, List<BitSet> serving, List<BitSet> atHome) {
    Comparator<Integer> order =
        Comparator.comparing((Integer need) -> ORDER.indexOf(needs.get(need).role()))
            .thenComparing(need -> atHome.get(need).isEmpty())
            .thenComparing(need -> needs.get(need).window().start())
            .thenComparing(need -> needs.get(need));
    List<Integer> ordered = set.needs().stream().sorted(order).toList();
    if (!set.allClash()) {
      return ordered.subList(ordered.size() - 1, ordered.size());
    }
    int[][] pieces =
        ordered.stream().map(need -> serving.get(need).stream().toArray()).toArray(int[][]::new);
    Matching matching = Matching.inOrder(pieces);
    return IntStream.range(0, ordered.size())
        .filter(place -> !matching.isMatched(place))
        .mapToObj(ordered::get)
        .sorted()
        .toList();
  }
}
