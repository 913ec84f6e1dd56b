package vestiary.allocation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.stream.Stream;
import vestiary.vesting.MassId;
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

  private record Place(PieceKind kind, Level level, List<MassId> masses) {
    static Place of(Shortage shortage) {
      return new Place(shortage.pieceKind(), shortage.level(), shortage.masses());
    }

    /** Where the finding of what it comes with would stand. */
    Place set() {
      return new Place(COMES_WITH.get(kind), level, masses);
    }
  }

  /** What is left, graver where the finding left out was graver; order is kept. */
  static List<Shortage> apply(List<Shortage> shortages) {
    List<Shortage> ofCluster =
        shortages.stream().filter(one -> one.level() == Level.CLUSTER).toList();
    List<Shortage> left = new ArrayList<>();
    List<Place> own = new ArrayList<>();
    Map<Place, List<Integer>> places = new HashMap<>();
    for (Shortage one : shortages) {
      if (one.level() == Level.CLUSTER || !isWithin(one, ofCluster)) {
        own.add(Place.of(one));
        places.computeIfAbsent(own.get(left.size()), unknown -> new ArrayList<>()).add(left.size());
        left.add(one);
      }
    }
    List<Shortage> kept = new ArrayList<>(left);
    for (int at = 0; at < left.size(); at++) {
      Shortage stole = left.get(at);
      OptionalInt set =
          places.getOrDefault(own.get(at).set(), List.of()).stream()
              .mapToInt(Integer::intValue)
              .filter(place -> left.get(place).missing() >= stole.missing())
              .findFirst();
      if (set.isPresent()) {
        kept.set(set.getAsInt(), withExhausted(kept.get(set.getAsInt()), stole));
        kept.set(at, null);
      }
    }
    return kept.stream().filter(Objects::nonNull).toList();
  }

  private static boolean isWithin(Shortage one, List<Shortage> ofCluster) {
    return ofCluster.stream().anyMatch(other -> other.needs().containsAll(one.needs()));
  }

  private static Shortage withExhausted(Shortage set, Shortage stole) {
    return set.withExhausted(
        Stream.concat(set.exhausted().stream(), stole.exhausted().stream()).sorted().toList());
  }
}
