package vestiary.allocation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import vestiary.allocation.Certificate.AllClash;
import vestiary.allocation.Certificate.Chain;
import vestiary.allocation.Certificate.Chains;
import vestiary.allocation.Certificate.Choice;
import vestiary.allocation.Certificate.Exhaustion;
import vestiary.allocation.Certificate.ForcedChoices;
import vestiary.allocation.Certificate.Option;
import vestiary.allocation.Certificate.Taken;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/** Checks a certificate with pencil and paper: by counting, by following, or by trying all ways. */
final class CertificateProof {

  /** Twelve needs and four pieces each stay far below that. */
  private static final int MOST_TRIES = 5_000_000;

  private final List<Need> needs;
  private final Collection<Piece> pieces;
  private final BiPredicate<Piece, Need> serves;
  private final Reckoning reckoning;
  private final List<String> objections = new ArrayList<>();
  private int tries;

  /**
   * @param pieces those that serve any of the needs
   */
  CertificateProof(
      List<Need> needs,
      Collection<Piece> pieces,
      BiPredicate<Piece, Need> serves,
      Reckoning reckoning) {
    this.needs =
        needs.stream().sorted(Comparator.comparing((Need need) -> need.window().start())).toList();
    this.pieces = pieces;
    this.serves = serves;
    this.reckoning = reckoning;
  }

  /** What is wrong with it; empty if it holds. */
  List<String> findObjections(Certificate certificate) {
    if (certificate instanceof AllClash) {
      require(reckoning.allClash(needs), "two of the needs can share a piece");
      require(pieces.size() < needs.size(), "there are pieces enough");
    } else if (certificate instanceof Chains chains) {
      checkChains(chains);
    } else if (certificate instanceof ForcedChoices forced) {
      checkForced(forced);
    } else if (certificate instanceof Exhaustion exhaustion) {
      checkExhaustion(exhaustion);
    } else {
      objections.add("nothing is shown");
    }
    return objections;
  }

  /** Whether the needs cannot all be served, by whatever shows it first. */
  boolean cannotAllBeServed() {
    boolean counted = pieces.size() < needs.size() && reckoning.allClash(needs);
    return counted || chainsFallShort() || (!canBeHandedOut(needs) && tries < MOST_TRIES);
  }

  private boolean chainsFallShort() {
    return pieces.stream().mapToInt(this::longest).sum() < needs.size();
  }

  private void checkChains(Chains chains) {
    Set<Piece> own = chains.chains().stream().map(Chain::piece).collect(Collectors.toSet());
    require(own.equals(Set.copyOf(pieces)), "not every piece that serves has its chain");
    require(own.size() == chains.chains().size(), "a piece has two chains");
    for (Chain chain : chains.chains()) {
      require(
          longest(chain.piece()) <= chain.needs().size(), "a piece can serve more than its chain");
      require(
          needs.containsAll(chain.needs())
              && chain.needs().stream().allMatch(need -> serves.test(chain.piece(), need)),
          "a piece does not serve its chain");
    }
    require(chains.atMost() < needs.size(), "the chains add up to the needs");
  }

  /** The longest path through the needs that a piece serves, in the order in which they begin. */
  private int longest(Piece piece) {
    Map<Need, Integer> lengths = new HashMap<>();
    for (Need need : needs) {
      if (serves.test(piece, need)) {
        int before =
            lengths.entrySet().stream()
                .filter(earlier -> reckoning.precedes(earlier.getKey(), need))
                .mapToInt(Map.Entry::getValue)
                .max()
                .orElse(0);
        lengths.put(need, before + 1);
      }
    }
    return lengths.values().stream().max(Comparator.naturalOrder()).orElse(0);
  }

  private void checkForced(ForcedChoices forced) {
    Map<Need, Set<Piece>> chosen = new HashMap<>();
    for (Choice choice : forced.choices()) {
      Set<Piece> others = serving(choice.need());
      require(others.removeAll(choice.pieces()), "a chosen piece does not serve");
      require(areGone(others, choice.need(), choice.gone(), chosen), "a choice is not forced");
      chosen.put(choice.need(), Set.copyOf(choice.pieces()));
    }
    require(needs.containsAll(chosen.keySet()), "a choice is made for a stranger");
    require(
        needs.contains(forced.without())
            && areGone(serving(forced.without()), forced.without(), forced.gone(), chosen),
        "a piece is left for the last need");
  }

  /**
   * Whether each group of pieces went to as many needs that clash, all of which had to take one.
   */
  private boolean areGone(
      Set<Piece> all, Need need, List<Taken> gone, Map<Need, Set<Piece>> chosen) {
    Set<Piece> taken =
        gone.stream().flatMap(one -> one.pieces().stream()).collect(Collectors.toSet());
    return taken.containsAll(all) && gone.stream().allMatch(one -> isGone(one, need, chosen));
  }

  private boolean isGone(Taken taken, Need need, Map<Need, Set<Piece>> chosen) {
    List<Need> clashing = new ArrayList<>(taken.by());
    clashing.add(need);
    return Set.copyOf(taken.by()).size() >= Set.copyOf(taken.pieces()).size()
        && reckoning.allClash(clashing)
        && taken.by().stream()
            .allMatch(by -> taken.pieces().containsAll(chosen.getOrDefault(by, pieces())));
  }

  private Set<Piece> pieces() {
    return new HashSet<>(pieces);
  }

  private void checkExhaustion(Exhaustion exhaustion) {
    require(
        exhaustion.options().stream()
            .map(Option::need)
            .collect(Collectors.toSet())
            .equals(Set.copyOf(needs)),
        "not every need has its options");
    for (Option option : exhaustion.options()) {
      require(
          serving(option.need()).equals(Set.copyOf(option.pieces())),
          "the options of a need differ");
    }
    require(!canBeHandedOut(needs), "there is a way to serve all the needs");
    for (Need need : needs) {
      List<Need> others = needs.stream().filter(other -> !other.equals(need)).toList();
      require(canBeHandedOut(others), "a need can be left out");
    }
    require(tries < MOST_TRIES, "there are too many ways to try");
  }

  private boolean canBeHandedOut(List<Need> asked) {
    return canBeHandedOut(asked, 0, new HashMap<>());
  }

  private boolean canBeHandedOut(List<Need> asked, int next, Map<Piece, Need> last) {
    if (next == asked.size()) {
      return true;
    }
    Need need = asked.get(next);
    for (Piece piece : pieces) {
      Need before = last.get(piece);
      boolean free = before == null || reckoning.precedes(before, need);
      if (tries++ < MOST_TRIES && free && serves.test(piece, need)) {
        last.put(piece, need);
        if (canBeHandedOut(asked, next + 1, last)) {
          return true;
        }
        last.put(piece, before);
      }
    }
    return false;
  }

  private Set<Piece> serving(Need need) {
    return pieces.stream()
        .filter(piece -> serves.test(piece, need))
        .collect(Collectors.toCollection(HashSet::new));
  }

  private void require(boolean holds, String objection) {
    if (!holds) {
      objections.add(objection);
    }
  }
}
