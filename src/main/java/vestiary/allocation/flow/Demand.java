package vestiary.allocation.flow;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Role;

/** The needs of some Masses, like ones together, and all that they ask. */
public final class Demand {

  private record Like(int ask, Role role, boolean must) {}

  private record Place(MassId mass, Visit visit) {}

  private final Situation situation;
  private final Map<Ask, Integer> numbers = new HashMap<>();
  private final List<Ask> asks = new ArrayList<>();
  private final List<Slot> slots = new ArrayList<>();
  private final Map<Need, Provision> last = new HashMap<>();

  private Demand(Collection<Need> needs, Situation situation, Roads roads) {
    this.situation = situation;
    situation.last().forEach(provision -> last.put(provision.need(), provision));
    Map<Place, List<Need>> byMass = new LinkedHashMap<>();
    needs.stream()
        .sorted()
        .forEach(
            need -> {
              Visit visit = roads.visit(need.church(), need.window());
              byMass
                  .computeIfAbsent(new Place(need.mass(), visit), unknown -> new ArrayList<>())
                  .add(need);
            });
    byMass.forEach((place, own) -> slots.add(new Slot(place.mass(), place.visit(), groups(own))));
  }

  /** The demand of these needs. */
  public static Demand of(Collection<Need> needs, Situation situation, Roads roads) {
    return new Demand(needs, situation, roads);
  }

  /** The Masses, by their first need in canonical order. */
  public List<Slot> slots() {
    return List.copyOf(slots);
  }

  /** What is asked, by number. */
  List<Ask> asks() {
    return asks;
  }

  Situation situation() {
    return situation;
  }

  /** What the last plan had for each need. */
  Map<Need, Provision> lastByNeed() {
    return last;
  }

  private List<Group> groups(List<Need> needs) {
    Map<Like, List<Need>> alike = new LinkedHashMap<>();
    for (Need need : needs) {
      Like like = new Like(number(Ask.of(need, situation)), need.role(), need.isMust());
      alike.computeIfAbsent(like, unknown -> new ArrayList<>()).add(need);
    }
    return alike.entrySet().stream()
        .map(e -> new Group(e.getKey().ask(), e.getKey().role(), e.getKey().must(), e.getValue()))
        .toList();
  }

  private int number(Ask ask) {
    return numbers.computeIfAbsent(
        ask,
        unknown -> {
          asks.add(ask);
          return asks.size() - 1;
        });
  }
}
