package vestiary.allocation.flow;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.plan.WholeSets;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.Role;

/** The needs of some Masses, like ones together, and all that they ask. */
public final class Demand {

  /** Where nothing is worn with it, the mate's number is -1. */
  private record Like(int ask, Role role, boolean must, int mate, boolean mateMust) {

    Like mirrored() {
      return new Like(mate, role, mateMust, ask, must);
    }
  }

  private record Place(MassId mass, Visit visit) {}

  private final Situation situation;
  private final Map<Ask, Integer> numbers = new HashMap<>();
  private final List<Ask> asks = new ArrayList<>();
  private final List<Slot> slots = new ArrayList<>();
  private final Map<Need, Provision> last = new HashMap<>();
  private final Map<Place, List<Provision>> settled = new HashMap<>();

  private Demand(
      Collection<Need> needs,
      Collection<? extends Provision> settled,
      Situation situation,
      Roads roads) {
    this.situation = situation;
    settled.forEach(
        one ->
            this.settled
                .computeIfAbsent(place(one.need(), roads), unknown -> new ArrayList<>())
                .add(one));
    situation.last().forEach(provision -> last.put(provision.need(), provision));
    Map<Place, List<Need>> byMass = new LinkedHashMap<>();
    needs.stream()
        .sorted()
        .forEach(
            need ->
                byMass.computeIfAbsent(place(need, roads), unknown -> new ArrayList<>()).add(need));
    byMass.forEach(
        (place, own) -> slots.add(new Slot(place.mass(), place.visit(), groups(place, own))));
  }

  /**
   * The demand of these needs.
   *
   * @param settled what others of their Masses wear whatever is found, those of other Masses left
   *     aside
   */
  public static Demand of(
      Collection<Need> needs,
      Collection<? extends Provision> settled,
      Situation situation,
      Roads roads) {
    return new Demand(needs, settled, situation, roads);
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

  /** What is settled at a Mass. */
  List<Provision> settled(Slot slot) {
    return settled(new Place(slot.mass(), slot.visit()));
  }

  private List<Provision> settled(Place place) {
    return settled.getOrDefault(place, List.of());
  }

  private static Place place(Need need, Roads roads) {
    return new Place(need.mass(), roads.visit(need.church(), need.window()));
  }

  private List<Group> groups(Place place, List<Need> needs) {
    Map<Like, List<Need>> alike = new LinkedHashMap<>();
    for (Need need : needs) {
      alike.computeIfAbsent(like(place, need, needs), unknown -> new ArrayList<>()).add(need);
    }
    List<Like> likes = List.copyOf(alike.keySet());
    return alike.entrySet().stream()
        .map(
            e ->
                new Group(
                    e.getKey().ask(),
                    e.getKey().role(),
                    e.getKey().must(),
                    e.getValue(),
                    likes.indexOf(e.getKey().mirrored())))
        .toList();
  }

  private Like like(Place place, Need need, List<Need> needs) {
    Optional<Need> mate =
        needs.stream().filter(o -> o.wearer().equals(need.wearer()) && areMates(o, need)).findAny();
    return new Like(
        number(ask(place, need)),
        need.role(),
        need.isMust(),
        mate.map(other -> number(ask(place, other))).orElse(-1),
        mate.filter(Need::isMust).isPresent());
  }

  private static boolean areMates(Need one, Need other) {
    return WholeSets.findStole(one.kind()).filter(stole -> stole == other.kind()).isPresent()
        || WholeSets.findStole(other.kind()).filter(stole -> stole == one.kind()).isPresent();
  }

  private Ask ask(Place place, Need need) {
    return Ask.of(need, situation)
        .beside(
            settled(place).stream()
                .filter(one -> one.need().wearer().equals(need.wearer()))
                .filter(one -> areMates(one.need(), need))
                .findAny()
                .map(Demand::setOf)
                .orElse(""));
  }

  /** A set that can still be made whole; none if what is settled belongs to none. */
  private static String setOf(Provision settled) {
    boolean isBareOuter =
        settled.findPiece().isEmpty() && WholeSets.findStole(settled.need().kind()).isPresent();
    if (isBareOuter) {
      return "";
    }
    return settled.findPiece().map(Piece::set).filter(set -> !set.isEmpty()).orElse(Ask.NO_SET);
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
