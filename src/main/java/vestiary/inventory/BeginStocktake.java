package vestiary.inventory;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.pool.Astray;
import vestiary.pool.Care;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadPool;
import vestiary.pool.ReadTaken;
import vestiary.pool.WhereItIs;
import vestiary.web.Speech;

/** Begins to take stock of a church: every piece that is at home there is a line to be ticked. */
@ApplicationScoped
@Transactional
public class BeginStocktake {

  private final StocktakeRows stocktakes;
  private final StocktakeLineRows lines;
  private final ReadPool pool;
  private final ReadTaken taken;
  private final WhereItIs where;
  private final ReadCluster cluster;
  private final CurrentVisitor visitor;
  private final Clock clock;

  BeginStocktake(
      StocktakeRows stocktakes,
      StocktakeLineRows lines,
      ReadPool pool,
      ReadTaken taken,
      WhereItIs where,
      ReadCluster cluster,
      CurrentVisitor visitor,
      Clock clock) {
    this.stocktakes = stocktakes;
    this.lines = lines;
    this.pool = pool;
    this.taken = taken;
    this.where = where;
    this.cluster = cluster;
    this.visitor = visitor;
    this.clock = clock;
  }

  /**
   * Begins one, or leads to the one that is under way there, since several count together.
   *
   * @param slug short name of the church
   * @return id of the stocktake
   * @throws vestiary.problem.Refused if there is no such church
   */
  public UUID begin(String slug) {
    Church church = cluster.getChurch(slug);
    visitor.refuseOutsideOwn(Action.KEEP_VESTMENTS, church.id().value());
    Optional<StocktakeRow> open = stocktakes.findOpen(church.id().value());
    return open.isPresent() ? open.get().id : fresh(church);
  }

  private UUID fresh(Church church) {
    StocktakeRow row = new StocktakeRow();
    row.churchId = church.id().value();
    row.begunAt = clock.instant();
    row.begunBy = visitor.visitor().mark();
    stocktakes.persistAndFlush(row);
    Map<String, String> away = Speech.forTheRecord(this::away);
    Map<String, UUID> ids = pool.ids();
    pool.pieces(row.begunAt).stream()
        .filter(piece -> piece.home().equals(church.id()))
        .forEach(piece -> lines.persist(line(row, ids.get(piece.code()), piece, away)));
    return row.id;
  }

  private StocktakeLineRow line(
      StocktakeRow of, UUID id, PooledPiece piece, Map<String, String> away) {
    StocktakeLineRow line = new StocktakeLineRow();
    line.stocktakeId = of.id;
    line.pieceId = id;
    line.place = piece.place();
    line.expected = true;
    String known = inCare(piece, of.begunAt).orElse(away.getOrDefault(piece.code(), ""));
    if (!known.isEmpty()) {
      line.finding = Finding.ELSEWHERE.id();
      line.note = known;
      line.foundAt = of.begunAt;
      line.settled = "Away, as is known: " + known + ".";
    }
    return line;
  }

  private static Optional<String> inCare(PooledPiece piece, Instant now) {
    return piece.care().stream().filter(care -> care.isAt(now)).map(Care::reason).findFirst();
  }

  private Map<String, String> away() {
    Map<Object, String> names =
        cluster.churches().stream().collect(Collectors.toMap(Church::id, Church::name));
    List<Astray> astray = taken.awayFromHome(clock.instant());
    Map<String, String> away =
        astray.stream()
            .collect(Collectors.toMap(Astray::piece, one -> "at " + names.get(one.church())));
    away.putAll(where.out());
    return away;
  }
}
