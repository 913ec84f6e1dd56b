package vestiary.allocation.celebrant;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/**
 * Checks that some Masses cannot all be served, without any solver: by adding up what each priest
 * could take, or by trying all ways.
 */
public final class WantProof {

  private WantProof() {}

  /** What is wrong with a want, for the log; empty if it shows what it says. */
  public static List<String> findObjections(Question question, Want want) {
    List<String> objections = new ArrayList<>();
    List<MassToServe> masses =
        want.masses().stream().map(question::find).flatMap(Optional::stream).toList();
    if (masses.size() != want.masses().size()
        || new HashSet<>(masses).size() != masses.size()
        || !want.masses().contains(want.mass())) {
      objections.add("A want names other Masses than there are: " + want);
      return objections;
    }
    Capacity capacity = new Capacity(question);
    int sum = 0;
    for (Priest priest : question.priests()) {
      int most = capacity.of(priest, masses);
      sum += most;
      if (most != said(want, priest)) {
        objections.add("Priest " + priest.id().value() + " could take " + most + " of " + want);
      }
    }
    boolean holds =
        switch (want.ground()) {
          case COUNTED -> sum < masses.size();
          case TRIED -> capacity.tryAll(masses, WantFinder.MOST_STEPS) == Capacity.Tried.IMPOSSIBLE;
          case SEARCHED -> true;
        };
    if (!holds) {
      objections.add("All of these could be served: " + want);
    }
    return objections;
  }

  private static int said(Want want, Priest priest) {
    return want.most().stream()
        .filter(most -> most.priest().equals(priest.id()))
        .mapToInt(Want.Most::masses)
        .findFirst()
        .orElse(0);
  }
}
