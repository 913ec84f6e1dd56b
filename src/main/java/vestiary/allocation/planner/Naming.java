package vestiary.allocation.planner;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import vestiary.allocation.flow.Chain;
import vestiary.allocation.flow.FlowModel;
import vestiary.allocation.flow.Item;
import vestiary.allocation.flow.Visit;
import vestiary.allocation.plan.Situation;

/**
 * Puts items to chains. Items of one supply are alike in all that was measured, so this changes no
 * measure: the same item as in the last plan first, then the one that belongs where it ends, then
 * the one worn least, then by code.
 */
final class Naming {

  private static final long CHANGE = 1L << 40;
  private static final long AWAY = 1L << 30;
  private static final long WEAR = 1L << 16;

  private record Supplied(int commodity, List<Item> items, Visit after, List<Visit> due) {}

  private final FlowModel model;
  private final Situation situation;
  private final LastWorn last;

  Naming(FlowModel model, Situation situation) {
    this.model = model;
    this.situation = situation;
    this.last = new LastWorn(situation);
  }

  /** One itinerary for each chain. */
  List<Itinerary> name(List<Chain> chains) {
    Map<Supplied, List<Chain>> bySupply = new LinkedHashMap<>();
    chains.forEach(
        chain ->
            bySupply
                .computeIfAbsent(
                    new Supplied(chain.commodity(), chain.items(), chain.after(), chain.due()),
                    unknown -> new ArrayList<>())
                .add(chain));
    List<Itinerary> named = new ArrayList<>();
    bySupply.forEach((supply, own) -> named.addAll(name(supply, own)));
    return last.isEmpty() ? named : new TailSwaps(model, last).of(named);
  }

  private List<Itinerary> name(Supplied supply, List<Chain> chains) {
    long[][] costs =
        chains.stream()
            .map(
                chain ->
                    IntStream.range(0, supply.items().size())
                        .mapToLong(at -> cost(chain, supply.items().get(at), at))
                        .toArray())
            .toArray(long[][]::new);
    int[] itemOf = LeastCost.of(costs);
    return IntStream.range(0, chains.size())
        .mapToObj(
            at ->
                new Itinerary(
                    supply.commodity(),
                    supply.items().get(itemOf[at]),
                    supply.after(),
                    supply.due(),
                    chains.get(at).legs()))
        .toList();
  }

  private long cost(Chain chain, Item item, int at) {
    long masses = chain.legs().stream().filter(Chain.Leg::isMass).count();
    long away = model.isHomeInTheEnd(item, chain) ? 0 : AWAY;
    if (masses == 0) {
      return away;
    }
    long changes = item.pieces().size() * masses - last.kept(item, chain.legs(), model);
    long worn = situation.traits(item.pieces().get(0)).worn();
    return (last.isEmpty() ? 0 : changes * CHANGE) + away + worn * WEAR + at;
  }
}
