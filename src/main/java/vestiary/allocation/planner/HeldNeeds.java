package vestiary.allocation.planner;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import vestiary.allocation.flow.Ask;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.Role;
import vestiary.vesting.Wearer;

/**
 * Which needs are served by pieces that sacristans have set aside: each piece by the need it is
 * nearest to, the principal celebrant first and a set by one wearer. These needs are asked no more.
 */
final class HeldNeeds {

  private static final Map<Role, Integer> WEIGHT =
      Map.of(Role.PRINCIPAL, 0, Role.MINISTER, 1, Role.DEACON, 2, Role.CONCELEBRANT, 3);

  private final Situation situation;
  private final Map<MassId, List<Need>> open = new HashMap<>();
  private final Map<Need, Provision.Worn> held = new TreeMap<>();
  private final Map<String, Wearer> wearers = new HashMap<>();

  private HeldNeeds(Situation situation) {
    this.situation = situation;
    situation.span().needs().stream()
        .sorted()
        .forEach(need -> open.computeIfAbsent(need.mass(), unknown -> new ArrayList<>()).add(need));
    Map<String, Piece> pieces = new HashMap<>();
    situation.span().pieces().forEach(piece -> pieces.put(piece.code(), piece));
    situation.holds().stream()
        .filter(hold -> pieces.containsKey(hold.piece()))
        .sorted(
            Comparator.comparing((Hold hold) -> pieces.get(hold.piece()).kind())
                .thenComparing(Hold::piece))
        .forEach(hold -> serve(hold, pieces.get(hold.piece())));
  }

  /** The needs that held pieces serve, and with what. */
  static Map<Need, Provision.Worn> of(Situation situation) {
    return new HeldNeeds(situation).held;
  }

  private void serve(Hold hold, Piece piece) {
    List<Need> needs = open.getOrDefault(hold.mass(), new ArrayList<>());
    String set = hold.mass() + " " + piece.set();
    Optional<Need> served =
        needs.stream()
            .filter(need -> depth(need, piece) != Ask.NEVER)
            .min(
                Comparator.comparing((Need need) -> depth(need, piece))
                    .thenComparing(need -> !need.wearer().equals(wearers.get(set)))
                    .thenComparing(need -> WEIGHT.get(need.role()))
                    .thenComparing(need -> need));
    served.ifPresent(
        need -> {
          needs.remove(need);
          held.put(need, new Provision.Worn(need, piece, depth(need, piece), true));
          wearers.put(set, need.wearer());
        });
  }

  private int depth(Need need, Piece piece) {
    return Ask.of(need, situation).depth(piece, situation.traits(piece));
  }
}
