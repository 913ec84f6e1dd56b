package vestiary.allocation.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import vestiary.allocation.flow.Ask;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Wearer;

/**
 * Hands out the pieces that are at one Mass: as the norms have it, then as people prefer it, then
 * whole sets, then as it was, then in order of wearers and codes.
 */
final class Dressing {

  private static final long IMPOSSIBLE = 1L << 58;
  private static final int BASE = 0;
  private static final int DEEPEST = 3;
  private static final int OTHER = 4;
  private static final int MUST = 5;
  private static final int PRINCIPAL = 6;
  private static final int LEVELS = 7;
  private static final long MOST_DISPLEASURE = 16;

  private final Situation situation;
  private final Map<Need, String> last = new HashMap<>();

  Dressing(Situation situation) {
    this.situation = situation;
    situation.last().stream()
        .filter(was -> was.findPiece().isPresent())
        .forEach(was -> last.put(was.need(), was.findPiece().get().code()));
  }

  /**
   * A provision for each need.
   *
   * @param needs of one Mass
   * @param pieces that are there for them
   */
  List<Provision> dress(List<Need> needs, List<Piece> pieces) {
    Map<Wearer, String> sets = new HashMap<>();
    List<Provision> provisions = new ArrayList<>();
    // Stoles come after what goes over them, so that they can follow it.
    Map<PieceKind, List<Need>> byKind =
        needs.stream()
            .sorted(Comparator.comparing(Dressing::isStole))
            .collect(Collectors.groupingBy(Need::kind, LinkedHashMap::new, Collectors.toList()));
    byKind.forEach(
        (kind, own) -> {
          List<Piece> there = pieces.stream().filter(piece -> piece.kind() == kind).toList();
          List<Provision> dressed = dress(own, there, sets);
          dressed.forEach(
              one -> one.findPiece().ifPresent(p -> sets.put(one.need().wearer(), p.set())));
          provisions.addAll(dressed);
        });
    return provisions;
  }

  private static boolean isStole(Need need) {
    return need.kind() == PieceKind.STOLE || need.kind() == PieceKind.DEACON_STOLE;
  }

  private List<Provision> dress(List<Need> needs, List<Piece> pieces, Map<Wearer, String> sets) {
    long[] weights = weights(needs, pieces);
    long[][] costs = new long[needs.size()][pieces.size() + needs.size()];
    for (int at = 0; at < needs.size(); at++) {
      Need need = needs.get(at);
      for (int piece = 0; piece < pieces.size(); piece++) {
        costs[at][piece] = cost(need, pieces.get(piece), sets, weights);
      }
      Arrays.fill(costs[at], pieces.size(), costs[at].length, weights[level(need)]);
    }
    int[] chosen = LeastCost.of(costs);
    return IntStream.range(0, needs.size())
        .mapToObj(
            at ->
                chosen[at] < pieces.size()
                    ? worn(needs.get(at), pieces.get(chosen[at]))
                    : without(needs.get(at)))
        .toList();
  }

  private Provision worn(Need need, Piece piece) {
    return new Provision.Worn(need, piece, depth(need, piece), false);
  }

  private Provision without(Need need) {
    int depth = Ask.of(need, situation).depthWithout();
    return depth == Ask.NEVER ? new Provision.Unmet(need) : new Provision.LeftOut(need, depth);
  }

  /**
   * Weights of the levels, of one person's set and one person's change: each more than all that is
   * lighter together. Levels that do not occur take no room.
   */
  private long[] weights(List<Need> needs, List<Piece> pieces) {
    SortedSet<Integer> levels = new TreeSet<>();
    for (Need need : needs) {
      levels.add(level(need));
      pieces.stream().map(piece -> depth(need, piece)).filter(d -> d > 0).forEach(levels::add);
    }
    long base = needs.size() + 1L;
    long[] weights = new long[LEVELS];
    weights[BASE] = base;
    long weight = base * base * base * MOST_DISPLEASURE;
    for (int level : levels) {
      weights[level] = weight;
      weight *= base;
    }
    return weights;
  }

  private long cost(Need need, Piece piece, Map<Wearer, String> sets, long[] weights) {
    int depth = depth(need, piece);
    if (depth == Ask.NEVER) {
      return IMPOSSIBLE;
    }
    String set = sets.getOrDefault(need.wearer(), piece.set());
    String before = last.getOrDefault(need, piece.code());
    long base = weights[BASE];
    return (depth == 0 ? 0 : weights[depth])
        + Ask.of(need, situation).displeasure(situation.traits(piece)) * base * base
        + (set.equals(piece.set()) ? 0 : base)
        + (before.equals(piece.code()) ? 0 : 1);
  }

  /** Without a piece: the depth of leaving it out, or how grave it is that the need is unmet. */
  private int level(Need need) {
    int depth = Ask.of(need, situation).depthWithout();
    if (depth != Ask.NEVER) {
      return Math.min(depth, DEEPEST);
    }
    return need.role() == Role.PRINCIPAL ? PRINCIPAL : need.isMust() ? MUST : OTHER;
  }

  private int depth(Need need, Piece piece) {
    return Math.min(DEEPEST, Ask.of(need, situation).depth(piece, situation.traits(piece)));
  }
}
