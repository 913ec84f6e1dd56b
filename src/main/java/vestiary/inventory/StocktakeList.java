package vestiary.inventory;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.vesting.ChurchId;
import vestiary.web.Choice;
import vestiary.web.Frames;
import vestiary.web.Speech;

/** Sets out the list of all stocktakes. */
@ApplicationScoped
@Transactional
class StocktakeList {

  private final ReadStocktakes stocktakes;
  private final ReadCluster cluster;
  private final WhoCounted who;
  private final CurrentVisitor visitor;
  private final Frames frames;

  StocktakeList(
      ReadStocktakes stocktakes,
      ReadCluster cluster,
      WhoCounted who,
      CurrentVisitor visitor,
      Frames frames) {
    this.stocktakes = stocktakes;
    this.cluster = cluster;
    this.who = who;
    this.visitor = visitor;
    this.frames = frames;
  }

  StocktakeListView view() {
    Map<ChurchId, Church> churches =
        cluster.churches().stream()
            .collect(
                Collectors.toMap(Church::id, Function.identity(), (a, b) -> a, LinkedHashMap::new));
    Map<String, String> names = who.names();
    return new StocktakeListView(
        frames.of("vestments", "/stocktakes"),
        Choice.of(
            churches.values().stream()
                .filter(c -> visitor.isOffered(Action.KEEP_VESTMENTS, c.id().value()))
                .map(c -> Choice.Option.of(c.slug(), c.name()))
                .toList()),
        stocktakes.all().stream()
            .map(one -> row(one, churches.get(one.church()).name(), names))
            .toList());
  }

  private static StocktakeListView.Row row(
      Stocktake one, String church, Map<String, String> names) {
    String when =
        one.heldOn().stream().map(Speech::dateAndYear).findFirst().orElse(say("under way"));
    return new StocktakeListView.Row(
        one.elsewhere() ? "" : "/stocktakes/" + one.id(),
        church,
        one.elsewhere() ? when + say(", made elsewhere") : when,
        WhoCounted.name(names, one.closedBy()));
  }
}
