package vestiary.allocation.planner;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import vestiary.allocation.flow.Ask;
import vestiary.allocation.flow.FlowModel;
import vestiary.allocation.flow.Group;
import vestiary.allocation.flow.Item;
import vestiary.allocation.flow.Outfit;
import vestiary.allocation.flow.Slot;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.plan.WholeSets;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/**
 * Hands out the pieces that are at one Mass as a solution has it: it says how many of a group wear
 * which class and how many of them a whole set; here each gets a name, the last plan's where that
 * can be, else in order of wearers and codes.
 */
final class Dressing {

  private record WholeSet(Piece outer, Piece stole) {}

  /** What one wearer has; empty where nothing of it is worn. */
  private record Worn(Outfit outfit, Optional<Piece> piece, Optional<Piece> mate) {}

  private final FlowModel model;
  private final Situation situation;
  private final LastWorn last;
  private final Slot slot;
  private final List<Item> items;
  private final Set<Piece> taken = new HashSet<>();

  private Dressing(
      FlowModel model, Situation situation, LastWorn last, Slot slot, List<Item> items) {
    this.model = model;
    this.situation = situation;
    this.last = last;
    this.slot = slot;
    this.items = items;
  }

  /**
   * A provision for each need of one Mass.
   *
   * @param outfits what its wearers have
   * @param items that are there for them, those worn least first, then in order of code
   */
  static List<Provision> dress(
      FlowModel model,
      Situation situation,
      LastWorn last,
      Slot slot,
      List<Outfit> outfits,
      List<Item> items) {
    return new Dressing(model, situation, last, slot, items).provisions(outfits);
  }

  private List<Provision> provisions(List<Outfit> outfits) {
    List<Worn> worn = new ArrayList<>(whole(outfits.stream().filter(Outfit::whole).toList()));
    List<Outfit> others = outfits.stream().filter(outfit -> !outfit.whole()).toList();
    List<Optional<Piece>> pieces =
        pick(others.stream().map(Outfit::type).toList(), others.stream().map(this::group).toList());
    List<Optional<Piece>> mates =
        pick(others.stream().map(Outfit::mate).toList(), others.stream().map(this::mates).toList());
    for (int at = 0; at < others.size(); at++) {
      worn.add(new Worn(others.get(at), pieces.get(at), mates.get(at)));
    }
    List<Provision> provisions = new ArrayList<>();
    for (int place = 0; place < slot.groups().size(); place++) {
      int group = place;
      give(
          slot.groups().get(place),
          worn.stream().filter(one -> one.outfit().group() == group).toList(),
          provisions);
    }
    return provisions;
  }

  private List<Need> group(Outfit outfit) {
    return slot.groups().get(outfit.group()).needs();
  }

  private List<Need> mates(Outfit outfit) {
    Group group = slot.groups().get(outfit.group());
    return group.hasMate() ? slot.groups().get(group.mate()).needs() : List.of();
  }

  private List<Worn> whole(List<Outfit> outfits) {
    List<WholeSet> sets = sets();
    int[] chosen =
        CheapestFirst.of(
            outfits.size(),
            sets.size(),
            (row, column) -> cost(outfits.get(row), sets.get(column)),
            (row, column) -> take(sets.get(column)));
    List<Worn> worn = new ArrayList<>();
    for (int at = 0; at < outfits.size(); at++) {
      Optional<WholeSet> set = Optional.of(chosen[at]).filter(c -> c >= 0).map(sets::get);
      worn.add(new Worn(outfits.get(at), set.map(WholeSet::outer), set.map(WholeSet::stole)));
    }
    return worn;
  }

  private boolean take(WholeSet set) {
    boolean free = !taken.contains(set.outer()) && !taken.contains(set.stole());
    if (free) {
      taken.addAll(List.of(set.outer(), set.stole()));
    }
    return free;
  }

  private int cost(Outfit outfit, WholeSet set) {
    boolean isOfClass =
        model.type(set.outer()) == outfit.type() && model.type(set.stole()) == outfit.mate();
    return isOfClass
        ? changes(group(outfit), set.outer()) + changes(mates(outfit), set.stole())
        : CheapestFirst.NEVER;
  }

  /** 0 if some of these had it before, 1 else. */
  private int changes(List<Need> needs, Piece piece) {
    return needs.stream().anyMatch(need -> last.had(need, piece.code())) ? 0 : 1;
  }

  /** Both pieces of each set that is there whole, carried together or not; least worn first. */
  private List<WholeSet> sets() {
    Map<String, List<Piece>> bySet = new TreeMap<>();
    items.stream()
        .flatMap(item -> item.pieces().stream())
        .filter(piece -> !piece.set().isEmpty())
        .forEach(
            piece -> bySet.computeIfAbsent(piece.set(), unknown -> new ArrayList<>()).add(piece));
    List<WholeSet> sets = new ArrayList<>();
    for (List<Piece> pieces : bySet.values()) {
      for (Piece outer : pieces) {
        pieces.stream()
            .filter(
                other ->
                    WholeSets.findStole(outer.kind()).filter(k -> k == other.kind()).isPresent())
            .forEach(stole -> sets.add(new WholeSet(outer, stole)));
      }
    }
    sets.sort(Comparator.comparingInt(set -> situation.traits(set.outer()).worn()));
    return sets;
  }

  /** A piece of each class out of what is left, as far as a class is one. */
  private List<Optional<Piece>> pick(List<Integer> types, List<List<Need>> wearers) {
    List<Piece> pieces =
        items.stream()
            .flatMap(item -> item.pieces().stream())
            .filter(piece -> !taken.contains(piece))
            .toList();
    int[] chosen =
        CheapestFirst.of(
            types.size(),
            pieces.size(),
            (row, column) ->
                types.get(row) >= 0 && types.get(row) == model.type(pieces.get(column))
                    ? changes(wearers.get(row), pieces.get(column))
                    : CheapestFirst.NEVER);
    List<Optional<Piece>> picked = new ArrayList<>();
    for (int at = 0; at < types.size(); at++) {
      Optional<Piece> piece = Optional.of(chosen[at]).filter(c -> c >= 0).map(pieces::get);
      piece.ifPresent(taken::add);
      picked.add(piece);
    }
    return picked;
  }

  private void give(Group group, List<Worn> worn, List<Provision> provisions) {
    List<Need> needs = group.needs();
    List<Need> mates = group.hasMate() ? slot.groups().get(group.mate()).needs() : List.of();
    int[] chosen =
        CheapestFirst.of(
            worn.isEmpty() ? 0 : needs.size(),
            worn.size(),
            (row, column) ->
                changes(needs.subList(row, row + 1), worn.get(column).piece())
                    + (mates.isEmpty()
                        ? 0
                        : changes(mates.subList(row, row + 1), worn.get(column).mate())));
    for (int at = 0; at < chosen.length; at++) {
      Worn one = worn.get(chosen[at]);
      provisions.add(provision(needs.get(at), one.piece()));
      if (!mates.isEmpty()) {
        provisions.add(provision(mates.get(at), one.mate()));
      }
    }
  }

  private int changes(List<Need> needs, Optional<Piece> piece) {
    return piece.map(one -> changes(needs, one)).orElse(1);
  }

  private Provision provision(Need need, Optional<Piece> piece) {
    Ask ask = Ask.of(need, situation);
    if (piece.isPresent()) {
      int depth = ask.depth(piece.get(), situation.traits(piece.get()));
      return new Provision.Worn(need, piece.get(), depth, false);
    }
    return ask.depthWithout() == Ask.NEVER
        ? new Provision.Unmet(need)
        : new Provision.LeftOut(need, ask.depthWithout());
  }
}
