package vestiary.allocation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.vesting.PieceKind;

/**
 * Leaves out findings that another one says already: a local one whose needs all stand in one of
 * the cluster, and that of stoles where the chasubles of the same Masses fall at least as short,
 * since a set brings its stole; deacons' stoles and dalmatics likewise.
 */
final class Supersession {

  private static final Map<PieceKind, PieceKind> COMES_WITH =
      Map.of(PieceKind.STOLE, PieceKind.CHASUBLE, PieceKind.DEACON_STOLE, PieceKind.DALMATIC);

  private Supersession() {}

  /** What is left, graver where the finding left out was graver; order is kept. */
  static List<Shortage> apply(List<Shortage> shortages) {
    List<Shortage> left =
        new ArrayList<>(
            shortages.stream().filter(one -> !isWithinCluster(one, shortages)).toList());
    for (Shortage stole : List.copyOf(left)) {
      findSet(stole, left).ifPresent(set -> merge(stole, set, left));
    }
    return List.copyOf(left);
  }

  private static boolean isWithinCluster(Shortage one, List<Shortage> shortages) {
    return one.level() == Level.LOCAL
        && shortages.stream()
            .filter(other -> other.level() == Level.CLUSTER)
            .anyMatch(other -> other.needs().containsAll(one.needs()));
  }

  private static Optional<Shortage> findSet(Shortage stole, List<Shortage> left) {
    return left.stream()
        .filter(set -> set.pieceKind() == COMES_WITH.get(stole.pieceKind()))
        .filter(set -> set.level() == stole.level() && set.missing() >= stole.missing())
        .filter(set -> set.masses().equals(stole.masses()))
        .findFirst();
  }

  private static void merge(Shortage stole, Shortage set, List<Shortage> left) {
    left.remove(stole);
    left.set(left.indexOf(set), withExhausted(set, stole));
  }

  private static Shortage withExhausted(Shortage set, Shortage stole) {
    return set.withExhausted(
        Stream.concat(set.exhausted().stream(), stole.exhausted().stream()).sorted().toList());
  }
}
