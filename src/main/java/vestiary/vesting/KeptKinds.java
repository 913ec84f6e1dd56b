package vestiary.vesting;

import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/**
 * Which kinds of piece a church keeps by list. Most ministers find alb, amice and cincture in the
 * cupboard or bring their own, so those are asked for only where somebody counts them.
 */
public final class KeptKinds {

  /** No list holds anything, so that nothing is asked for that nobody counts. */
  public static final KeptKinds NONE = new KeptKinds(Map.of());

  private final Map<ChurchId, Set<PieceKind>> byChurch;

  private KeptKinds(Map<ChurchId, Set<PieceKind>> byChurch) {
    this.byChurch = byChurch;
  }

  /** The kinds of these pieces, each kept where its home is, whether or not it is away. */
  public static KeptKinds of(Collection<Piece> pieces) {
    Map<ChurchId, Set<PieceKind>> byChurch = new HashMap<>();
    pieces.forEach(
        piece ->
            byChurch
                .computeIfAbsent(piece.home(), church -> EnumSet.noneOf(PieceKind.class))
                .add(piece.kind()));
    return new KeptKinds(byChurch);
  }

  /** The same, and these kinds at that church besides. */
  KeptKinds alsoAt(ChurchId church, Set<PieceKind> kinds) {
    Map<ChurchId, Set<PieceKind>> more = new HashMap<>(byChurch);
    Set<PieceKind> all = EnumSet.copyOf(kinds);
    all.addAll(byChurch.getOrDefault(church, Set.of()));
    more.put(church, all);
    return new KeptKinds(more);
  }

  /** The same kinds at the same churches. */
  @Override
  public boolean equals(Object other) {
    return other instanceof KeptKinds kept && byChurch.equals(kept.byChurch);
  }

  @Override
  public int hashCode() {
    return byChurch.hashCode();
  }

  boolean at(ChurchId church, PieceKind kind) {
    return byChurch.getOrDefault(church, Set.of()).contains(kind);
  }

  boolean anywhere(PieceKind kind) {
    return byChurch.values().stream().anyMatch(kinds -> kinds.contains(kind));
  }
}
