package vestiary.allocation.planner;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import vestiary.allocation.flow.Item;
import vestiary.allocation.flow.Items;
import vestiary.allocation.flow.Roads;
import vestiary.allocation.flow.Visit;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/**
 * Needs that a plan answers in a given way, whatever else it does.
 *
 * @param provisions by need
 * @param holds where pieces are bound for them or for Masses not asked about
 */
record Settled(Map<Need, Provision> provisions, List<Hold> holds) {

  /** What sacristans have set aside. */
  static Settled held(Situation situation) {
    return new Settled(new TreeMap<>(HeldNeeds.of(situation)), situation.holds());
  }

  /**
   * That and other provisions, as far as they go with it: where a piece is elsewhere or cannot come
   * in time, its need stays open. The other piece of a set goes where the one is needed, if it can.
   */
  static Settled keeping(Collection<Provision> kept, Situation situation, Roads roads) {
    Settled held = held(situation);
    Map<Need, Provision> provisions = new TreeMap<>(held.provisions());
    List<Hold> holds = new ArrayList<>(held.holds());
    Map<String, List<Provision.Worn>> worn = new TreeMap<>();
    for (Provision one : kept) {
      if (one instanceof Provision.Worn piece && !provisions.containsKey(one.need())) {
        worn.computeIfAbsent(piece.piece().code(), unknown -> new ArrayList<>()).add(piece);
      } else {
        provisions.putIfAbsent(one.need(), one);
      }
    }
    for (Item item : Items.of(situation, roads, Set.of()).all()) {
      new Binding(item, roads, provisions, holds).bind(worn);
    }
    return new Settled(provisions, holds);
  }

  /** Settles what one item is worn for. */
  private record Binding(
      Item item, Roads roads, Map<Need, Provision> provisions, List<Hold> holds) {

    void bind(Map<String, List<Provision.Worn>> worn) {
      List<Provision.Worn> all = new ArrayList<>();
      for (Piece piece : item.pieces()) {
        List<Provision.Worn> own = possible(worn.getOrDefault(piece.code(), List.of()));
        own.forEach(one -> settle(one, piece));
        all.addAll(own);
      }
      if (item.pieces().size() > 1 && isChain(visits(all))) {
        all.forEach(one -> item.pieces().forEach(piece -> accompany(one.need(), piece)));
      }
    }

    private void settle(Provision.Worn one, Piece piece) {
      provisions.put(one.need(), one);
      holds.add(hold(one.need(), piece));
    }

    private void accompany(Need need, Piece piece) {
      Hold hold = hold(need, piece);
      if (!holds.contains(hold)) {
        holds.add(hold);
      }
    }

    private static Hold hold(Need need, Piece piece) {
      return new Hold(piece.code(), need.mass(), need.church(), need.window());
    }

    /** Those that can all be, the earlier before the later. */
    private List<Provision.Worn> possible(List<Provision.Worn> worn) {
      List<Provision.Worn> possible = new ArrayList<>();
      for (Provision.Worn one : worn.stream().sorted(BY_NEED).toList()) {
        possible.add(one);
        if (!isChain(visits(possible)) || isWornTwice(possible)) {
          possible.remove(possible.size() - 1);
        }
      }
      return possible;
    }

    private static boolean isWornTwice(List<Provision.Worn> worn) {
      Set<MassId> masses = new HashSet<>();
      return !worn.stream().allMatch(one -> masses.add(one.need().mass()));
    }

    private List<Visit> visits(List<Provision.Worn> worn) {
      Set<Visit> visits = new HashSet<>(item.fixed());
      worn.forEach(one -> visits.add(roads.visit(one.need().church(), one.need().window())));
      return visits.stream()
          .sorted(Comparator.comparing(Visit::setOut).thenComparing(Visit::cleared))
          .collect(Collectors.toList());
    }

    private boolean isChain(List<Visit> visits) {
      for (int at = 0; at < visits.size(); at++) {
        boolean follows = at == 0 || visits.get(at - 1).precedes(visits.get(at), roads);
        boolean isReached = roads.between(item.start(), visits.get(at).place()) < Roads.NO_WAY;
        boolean mayBe = !item.stays() || visits.get(at).place() == item.start();
        if (!(follows && isReached && mayBe)) {
          return false;
        }
      }
      return true;
    }

    private static final Comparator<Provision.Worn> BY_NEED =
        Comparator.comparing(Provision.Worn::need);
  }
}
