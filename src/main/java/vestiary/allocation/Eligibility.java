package vestiary.allocation;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Which pieces serve which need, both named by their places. Needs that nothing serves are told
 * apart by a label, so that only those of one label make a finding together: the label stands after
 * the pieces as a piece that does not exist and is never counted.
 */
final class Eligibility {

  private final BitSet[] serving;
  private final int pieces;
  private final int places;

  /**
   * @param serving for each need the pieces that serve it
   * @param pieces how many there are
   * @param label of a need that nothing serves
   */
  Eligibility(List<BitSet> serving, int pieces, Function<Integer, Object> label) {
    this.pieces = pieces;
    this.serving = new BitSet[serving.size()];
    Map<Object, Integer> labels = new HashMap<>();
    Map<BitSet, BitSet> alike = new HashMap<>();
    for (int need = 0; need < this.serving.length; need++) {
      BitSet own = (BitSet) serving.get(need).clone();
      if (own.isEmpty()) {
        own.set(pieces + labels.computeIfAbsent(label.apply(need), unknown -> labels.size()));
      }
      this.serving[need] = alike.computeIfAbsent(own, Function.identity());
    }
    this.places = pieces + labels.size();
  }

  /** Pieces and label; the same object for needs that are served alike, not to be changed. */
  BitSet of(int need) {
    return serving[need];
  }

  /** The pieces proper that serve a need. */
  int[] piecesOf(int need) {
    BitSet own = serving[need];
    int[] proper = new int[count(own)];
    for (int at = 0, piece = own.nextSetBit(0); at < proper.length; at++) {
      proper[at] = piece;
      piece = own.nextSetBit(piece + 1);
    }
    return proper;
  }

  /** How many pieces proper are in the set. */
  int count(BitSet set) {
    int labels = 0;
    for (int place = set.nextSetBit(pieces); place >= 0; place = set.nextSetBit(place + 1)) {
      labels++;
    }
    return set.cardinality() - labels;
  }

  int pieces() {
    return pieces;
  }

  /** How many pieces and labels there are. */
  int places() {
    return places;
  }

  /**
   * The needs that share a piece with the first, with one that shares a piece with it, and so on.
   */
  List<Integer> connected(int first, List<Integer> needs) {
    BitSet reached = (BitSet) serving[first].clone();
    List<Integer> within = new ArrayList<>();
    List<Integer> open = new ArrayList<>(needs);
    boolean grows = true;
    while (grows) {
      grows = open.removeIf(need -> serving[need].intersects(reached) && within.add(need));
      within.forEach(need -> reached.or(serving[need]));
    }
    return within.stream().sorted().toList();
  }
}
