package vestiary.inventory;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadPool;
import vestiary.vesting.ChurchId;

/** The inventories of the churches, and how old they are. */
@ApplicationScoped
@Transactional
public class ReadInventories {

  private final ReadPool pool;
  private final ReadStocktakes stocktakes;
  private final ReadCluster cluster;
  private final Clock clock;

  ReadInventories(ReadPool pool, ReadStocktakes stocktakes, ReadCluster cluster, Clock clock) {
    this.pool = pool;
    this.stocktakes = stocktakes;
    this.cluster = cluster;
    this.clock = clock;
  }

  /**
   * The inventory of one church.
   *
   * @param last its date, or none
   * @param pieces at home there and in use, by code
   * @param withdrawn from use and at home there before, by code
   */
  public record Inventory(
      Church church,
      List<LocalDate> last,
      InventoryAge age,
      List<PooledPiece> pieces,
      List<PooledPiece> withdrawn) {

    public Inventory {
      last = List.copyOf(last);
      pieces = List.copyOf(pieces);
      withdrawn = List.copyOf(withdrawn);
    }
  }

  /** All churches, in the order in which people list them. */
  public List<Inventory> all() {
    return of(cluster.churches());
  }

  /**
   * That of one church.
   *
   * @throws vestiary.problem.Refused if there is no such church
   */
  public Inventory get(String slug) {
    return of(List.of(cluster.getChurch(slug))).get(0);
  }

  private List<Inventory> of(List<Church> churches) {
    LocalDate today = LocalDate.now(clock.withZone(cluster.cluster().zone()));
    Map<ChurchId, LocalDate> last = stocktakes.last();
    Map<ChurchId, List<PooledPiece>> used = byHome(pool.pieces(clock.instant()));
    Map<ChurchId, List<PooledPiece>> gone = byHome(pool.withdrawn());
    return churches.stream()
        .map(
            church -> {
              List<LocalDate> date = Stream.ofNullable(last.get(church.id())).toList();
              return new Inventory(
                  church,
                  date,
                  InventoryAge.of(date, today),
                  used.getOrDefault(church.id(), List.of()),
                  gone.getOrDefault(church.id(), List.of()));
            })
        .toList();
  }

  private static Map<ChurchId, List<PooledPiece>> byHome(List<PooledPiece> pieces) {
    return pieces.stream().collect(Collectors.groupingBy(PooledPiece::home));
  }
}
