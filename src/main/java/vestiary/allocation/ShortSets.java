package vestiary.allocation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds the needs that cannot all be served: first sets of needs that all clash; and where that is
 * not the whole of it, sets from which nothing can be left out. Once those who go without are left
 * out, the others can be served, unless a search has to give up: then nothing is claimed.
 */
final class ShortSets {

  /** For one block of needs; those of real parishes take some hundreds. */
  private static final long MOST_STEPS = 1_000_000;

  /** Of more needs than these nobody could try all ways again. */
  private static final int MOST_TO_EXHAUST = 12;

  private final Succession succession;
  private final Eligibility eligibility;
  private final Certifier certifier;
  private final Function<ShortSet, List<Integer>> unserved;
  private final HandOut handOut;

  /**
   * @param unserved which needs of a set go without
   */
  ShortSets(
      Succession succession,
      Eligibility eligibility,
      Certifier certifier,
      Function<ShortSet, List<Integer>> unserved) {
    this.succession = succession;
    this.eligibility = eligibility;
    this.certifier = certifier;
    this.unserved = unserved;
    this.handOut = new HandOut(succession, eligibility);
  }

  /** The sets; the same ones every time. */
  List<ShortSet> find(List<Integer> needs) {
    return new Blocks(succession, eligibility).of(needs).stream().flatMap(this::search).toList();
  }

  /**
   * These needs as a set if they all clash and are too many, else a set out of them from which
   * nothing can be left out; empty if all can be served, or the search has to give up.
   */
  Optional<ShortSet> findWhole(List<Integer> needs) {
    ShortSet whole = new ShortSet(needs, certifier.certify(needs));
    handOut.allow(MOST_STEPS);
    return whole.allClash() ? Optional.of(whole) : findIn(needs);
  }

  private Stream<ShortSet> search(int[] block) {
    List<Integer> rest = new ArrayList<>(IntStream.of(block).boxed().toList());
    if (handOut.servesQuickly(rest)) {
      return Stream.empty();
    }
    handOut.allow(MOST_STEPS);
    List<ShortSet> found = new ArrayList<>();
    for (List<Integer> set : ClashingSets.find(block, succession, eligibility)) {
      found.add(new ShortSet(set, new Certificate.AllClash()));
    }
    found.forEach(set -> rest.removeAll(unserved.apply(set)));
    for (Optional<ShortSet> more = findIn(rest); more.isPresent(); more = findIn(rest)) {
      found.add(more.get());
      rest.removeAll(unserved.apply(more.get()));
    }
    return found.stream();
  }

  private Optional<ShortSet> findIn(List<Integer> needs) {
    if (handOut.of(needs) != HandOut.Outcome.ONE_WITHOUT) {
      return Optional.empty();
    }
    DeletionFilter filter = new DeletionFilter(succession, handOut);
    return Stream.of(true, false)
        .map(farthestFirst -> filter.reduce(needs, farthestFirst))
        .map(set -> new ShortSet(set, certifier.certify(set)))
        .filter(set -> isEasy(set) || isExhausted(set))
        .min(
            Comparator.comparing((ShortSet set) -> set.certificate().kind())
                .thenComparing(set -> certifier.available(set.needs()))
                .thenComparing(set -> set.needs().size()));
  }

  private static boolean isEasy(ShortSet set) {
    return set.certificate().kind() != CertificateKind.EXHAUSTION;
  }

  private boolean isExhausted(ShortSet set) {
    return set.needs().size() <= MOST_TO_EXHAUST
        && set.needs().stream()
            .map(need -> set.needs().stream().filter(other -> !other.equals(need)).toList())
            .allMatch(others -> handOut.of(others) == HandOut.Outcome.ALL_SERVED);
  }
}
