package vestiary.regrouping;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import vestiary.cluster.Church;
import vestiary.cluster.Closings;
import vestiary.cluster.ReadCluster;
import vestiary.merger.CloseChurch;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadPool;
import vestiary.pool.WithdrawPiece;

/** Gives churches up to another cluster: what is said and kept there is from today on its own. */
@ApplicationScoped
class LeaveChurches {

  private final ReadCluster cluster;
  private final ReadPool pool;
  private final Closings closings;
  private final CloseChurch close;
  private final WithdrawPiece withdraw;
  private final Clock clock;

  LeaveChurches(
      ReadCluster cluster,
      ReadPool pool,
      Closings closings,
      CloseChurch close,
      WithdrawPiece withdraw,
      Clock clock) {
    this.cluster = cluster;
    this.pool = pool;
    this.closings = closings;
    this.close = close;
    this.withdraw = withdraw;
    this.clock = clock;
  }

  /**
   * Closes them today and withdraws the pieces at home there; what is closed and withdrawn stays
   * so.
   *
   * @param slugs their short names
   * @param to what the other cluster is called
   * @throws vestiary.problem.Refused if a piece is out or lent
   */
  @Transactional
  public void leave(List<String> slugs, String to) {
    Instant now = clock.instant();
    LocalDate today = LocalDate.now(clock.withZone(cluster.cluster().zone()));
    String reason = "Its church belongs to %s.".formatted(to);
    List<PooledPiece> pieces = pool.pieces(now);
    for (String slug : slugs) {
      Church church = cluster.getChurch(slug);
      if (closings.find(church.id()).filter(from -> !from.isAfter(today)).isEmpty()) {
        close.close(slug, today.toString(), "From this day on it belongs to %s.".formatted(to));
      }
      for (PooledPiece piece : pieces) {
        if (piece.home().equals(church.id())) {
          withdraw.withdraw(piece.code(), new WithdrawPiece.Request(today.toString(), reason, to));
        }
      }
    }
  }
}
