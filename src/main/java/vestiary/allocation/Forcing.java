package vestiary.allocation;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Choices that follow from one another: a need for which one piece is left takes it, and then it is
 * gone for all that clash with that need; until none is left for one of them. Pieces that serve the
 * same needs are one choice, and gone when as many clashing needs took one as there are.
 */
final class Forcing {

  /**
   * @param pieces like pieces, the only ones left; empty if none is
   * @param takers for all other pieces that serve the need, like ones together, the needs that took
   *     them
   */
  record Link(int need, BitSet pieces, Map<BitSet, List<Integer>> takers) {}

  private final List<Integer> needs;
  private final Succession succession;
  private final Map<Integer, List<BitSet>> left = new HashMap<>();
  private final Map<Integer, Map<BitSet, List<Integer>>> gone = new HashMap<>();
  private final Map<BitSet, List<Integer>> takers = new HashMap<>();
  private final List<Link> links = new ArrayList<>();

  Forcing(List<Integer> needs, Succession succession, Eligibility eligibility) {
    this.needs = needs;
    this.succession = succession;
    for (int need : needs) {
      left.put(need, new ArrayList<>());
      gone.put(need, new LinkedHashMap<>());
    }
    likePieces(eligibility)
        .forEach(
            (served, pieces) -> served.stream().forEach(at -> left.get(needs.get(at)).add(pieces)));
  }

  /** Pieces that serve the same of the needs, by the places of these. */
  private Map<BitSet, BitSet> likePieces(Eligibility eligibility) {
    Map<Integer, BitSet> served = new LinkedHashMap<>();
    for (int at = 0; at < needs.size(); at++) {
      for (int piece : eligibility.piecesOf(needs.get(at))) {
        served.computeIfAbsent(piece, unknown -> new BitSet()).set(at);
      }
    }
    Map<BitSet, BitSet> like = new LinkedHashMap<>();
    served.forEach((piece, own) -> like.computeIfAbsent(own, unknown -> new BitSet()).set(piece));
    return like;
  }

  /**
   * The choices that lead to a need for which none is left, that need last; empty if choices do not
   * follow so far.
   */
  List<Link> find() {
    for (Optional<Integer> next = next(); next.isPresent(); next = next()) {
      int need = next.get();
      List<BitSet> pieces = left.remove(need);
      links.add(new Link(need, pieces.isEmpty() ? new BitSet() : pieces.get(0), gone.get(need)));
      if (pieces.isEmpty()) {
        return thoseThatLeadToTheLast();
      }
      take(pieces.get(0), need);
    }
    return List.of();
  }

  /** A need with none left before one with one left. */
  private Optional<Integer> next() {
    for (int most = 0; most <= 1; most++) {
      for (int need : needs) {
        if (left.containsKey(need) && left.get(need).size() == most) {
          return Optional.of(need);
        }
      }
    }
    return Optional.empty();
  }

  private void take(BitSet pieces, int by) {
    List<Integer> all = takers.computeIfAbsent(pieces, unknown -> new ArrayList<>());
    all.add(by);
    left.forEach(
        (need, own) -> {
          if (own.contains(pieces)) {
            List<Integer> clashing =
                clashing(pieces.cardinality(), new ArrayList<>(List.of(need)), all);
            if (!clashing.isEmpty()) {
              own.remove(pieces);
              gone.get(need).put(pieces, clashing);
            }
          }
        });
  }

  /** So many of the others as clash with these and one another; empty if there are not enough. */
  private List<Integer> clashing(int wanted, List<Integer> these, List<Integer> others) {
    if (these.size() > wanted) {
      return List.copyOf(these.subList(1, these.size()));
    }
    for (int at = 0; at < others.size(); at++) {
      int one = others.get(at);
      if (these.stream().allMatch(other -> succession.clash(one, other))) {
        these.add(one);
        List<Integer> found = clashing(wanted, these, others.subList(at + 1, others.size()));
        if (!found.isEmpty()) {
          return found;
        }
        these.remove(these.size() - 1);
      }
    }
    return List.of();
  }

  private List<Link> thoseThatLeadToTheLast() {
    List<Link> chosen = new ArrayList<>();
    Set<Integer> asked = new HashSet<>(List.of(links.get(links.size() - 1).need()));
    for (int at = links.size() - 1; at >= 0; at--) {
      Link link = links.get(at);
      if (asked.contains(link.need())) {
        chosen.add(link);
        link.takers().values().forEach(asked::addAll);
      }
    }
    Collections.reverse(chosen);
    return chosen;
  }
}
