package vestiary.allocation;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;

/** Groups of pieces that belong together since some need is served by both, even through others. */
final class SharedPieces {

  private final Map<Integer, Integer> above = new HashMap<>();
  private final Map<Integer, BitSet> members = new HashMap<>();

  /** Puts these pieces, one or more, into one group with all that their groups hold. */
  void join(BitSet pieces) {
    int root = group(pieces);
    BitSet own = members.computeIfAbsent(root, unknown -> new BitSet());
    own.set(root);
    BitSet fresh = (BitSet) pieces.clone();
    fresh.andNot(own);
    for (int piece = fresh.nextSetBit(0); piece >= 0; piece = fresh.nextSetBit(piece + 1)) {
      int other = root(piece);
      if (other != root) {
        above.put(other, root);
        BitSet theirs = members.remove(other);
        if (theirs != null) {
          own.or(theirs);
          fresh.andNot(theirs);
        }
      }
      own.set(piece);
    }
  }

  /** The group of pieces that are in one group. */
  int group(BitSet pieces) {
    return root(pieces.nextSetBit(0));
  }

  private int root(int piece) {
    int root = piece;
    while (above.containsKey(root)) {
      root = above.get(root);
    }
    return root;
  }
}
