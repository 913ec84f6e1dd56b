package vestiary.inventory;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Closes a stocktake once all is looked for and settled. */
@ApplicationScoped
@Transactional
public class CloseStocktake {

  private final TakeStock stock;
  private final ReadStocktakes read;
  private final StocktakeRows stocktakes;
  private final ReadCluster cluster;
  private final CurrentVisitor visitor;
  private final Clock clock;

  CloseStocktake(
      TakeStock stock,
      ReadStocktakes read,
      StocktakeRows stocktakes,
      ReadCluster cluster,
      CurrentVisitor visitor,
      Clock clock) {
    this.stock = stock;
    this.read = read;
    this.stocktakes = stocktakes;
    this.cluster = cluster;
    this.visitor = visitor;
    this.clock = clock;
  }

  /**
   * Closes it: the inventory is as of today.
   *
   * @throws Refused if it is closed already, or something is left to look for or to settle
   */
  public void close(String id) {
    StocktakeRow row = stock.open(id);
    Stocktake stocktake = read.get(id);
    if (!stocktake.left().isEmpty() || !stocktake.open().isEmpty()) {
      throw new Refused(
          new Refusal.Taken(
              "", StocktakeWords.standing(stocktake) + say(" It cannot be closed yet.")));
    }
    row.heldOn = LocalDate.now(clock.withZone(cluster.cluster().zone()));
    row.closedAt = clock.instant();
    row.closedBy = visitor.visitor().mark();
    stocktakes.flush();
  }
}
