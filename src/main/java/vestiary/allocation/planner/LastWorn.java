package vestiary.allocation.planner;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import vestiary.allocation.flow.Chain;
import vestiary.allocation.flow.FlowModel;
import vestiary.allocation.flow.Item;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;

/** Which pieces the last plan had, by need and by Mass. */
final class LastWorn {

  private final Map<Need, String> byNeed = new HashMap<>();
  private final Map<MassId, Set<String>> byMass = new HashMap<>();

  LastWorn(Situation situation) {
    situation
        .last()
        .forEach(
            was ->
                was.findPiece()
                    .ifPresent(
                        piece -> {
                          byNeed.put(was.need(), piece.code());
                          byMass
                              .computeIfAbsent(was.need().mass(), unknown -> new TreeSet<>())
                              .add(piece.code());
                        }));
  }

  boolean isEmpty() {
    return byNeed.isEmpty();
  }

  /** Whether it had a piece for a need. */
  boolean had(Need need, String code) {
    return code.equals(byNeed.get(need));
  }

  /** How many pieces worn at Masses of the last plan an item would serve again. */
  long kept(Item item, Iterable<Chain.Leg> legs, FlowModel model) {
    long kept = 0;
    for (Chain.Leg leg : legs) {
      if (leg.isMass()) {
        Set<String> codes = byMass.getOrDefault(model.slot(leg.slot()).mass(), Set.of());
        kept += item.pieces().stream().filter(piece -> codes.contains(piece.code())).count();
      }
    }
    return kept;
  }
}
