package vestiary.inventory;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.pool.PoolNames;
import vestiary.vesting.ChurchId;

/** Stocktakes of the cluster. */
@ApplicationScoped
@Transactional
public class ReadStocktakes {

  private final StocktakeRows stocktakes;
  private final StocktakeLineRows lines;
  private final PoolNames names;

  ReadStocktakes(StocktakeRows stocktakes, StocktakeLineRows lines, PoolNames names) {
    this.stocktakes = stocktakes;
    this.lines = lines;
    this.names = names;
  }

  /** All of them without their lines: those under way first, then the newest. */
  public List<Stocktake> all() {
    return stocktakes.newestFirst().stream().map(row -> row.toStocktake(List.of())).toList();
  }

  /** The date of the last inventory, by church; a church that never had one is left out. */
  public Map<ChurchId, LocalDate> last() {
    return all().stream()
        .filter(Stocktake::isClosed)
        .collect(
            Collectors.toMap(
                Stocktake::church, one -> one.heldOn().get(0), (a, b) -> a.isAfter(b) ? a : b));
  }

  /**
   * The stocktake that an address names, with its lines.
   *
   * @throws vestiary.problem.Refused if there is none
   */
  public Stocktake get(String id) {
    StocktakeRow row = stocktakes.get(id);
    Map<UUID, String> codes = names.all();
    return row.toStocktake(
        lines.of(row.id).stream()
            .map(line -> line.toLine(codes.get(line.pieceId)))
            .sorted(
                Comparator.comparing((StocktakeLine line) -> !line.expected())
                    .thenComparing(StocktakeLine::place)
                    .thenComparing(StocktakeLine::code))
            .toList());
  }
}
