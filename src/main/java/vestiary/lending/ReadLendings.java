package vestiary.lending;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import vestiary.access.Clusters;
import vestiary.access.CurrentCluster;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;

/** What the present cluster lends and borrows. */
@ApplicationScoped
class ReadLendings {

  private final LendingRows rows;
  private final Clusters clusters;
  private final ReadCluster cluster;
  private final CurrentCluster current;
  private final Clock clock;

  ReadLendings(
      LendingRows rows,
      Clusters clusters,
      ReadCluster cluster,
      CurrentCluster current,
      Clock clock) {
    this.rows = rows;
    this.clusters = clusters;
    this.cluster = cluster;
    this.current = current;
    this.clock = clock;
  }

  /**
   * One of them, as the present cluster sees it.
   *
   * @param ours whether it is we who lend
   * @param other the cluster on the other side
   * @param from first moment
   * @param until the moment it is over
   * @param church where the pieces lie in our cluster, if it is we who borrow and said yes; else
   *     none
   * @param answeredAt none while it is offered
   * @param endedAt none until the pieces are said to be back
   * @param endedByUs whether it was we who said so
   * @param overdue whether the time is over and nobody has said that they are back
   * @param zone by whose clock the present cluster tells it
   */
  record Lending(
      UUID id,
      boolean ours,
      Clusters.Named other,
      Instant from,
      Instant until,
      LendingState state,
      List<LentPiece> pieces,
      String note,
      String answer,
      String ending,
      List<Church> church,
      Instant offeredAt,
      List<Instant> answeredAt,
      List<Instant> endedAt,
      boolean endedByUs,
      boolean overdue,
      ZoneId zone) {

    Lending {
      pieces = List.copyOf(pieces);
      church = List.copyOf(church);
      answeredAt = List.copyOf(answeredAt);
      endedAt = List.copyOf(endedAt);
    }
  }

  /** All of them, the latest first. */
  @Transactional
  List<Lending> all() {
    Map<UUID, Clusters.Named> names = new HashMap<>();
    List<Church> churches = cluster.churches();
    return rows.of(current.id()).stream().map(row -> lending(row, names, churches)).toList();
  }

  /**
   * One that an address names.
   *
   * @throws vestiary.problem.Refused if the present cluster is on neither side of any such
   */
  @Transactional
  Lending get(String id) {
    return lending(rows.get(id, current.id()), new HashMap<>(), cluster.churches());
  }

  private Lending lending(LendingRow row, Map<UUID, Clusters.Named> names, List<Church> churches) {
    boolean ours = row.clusterId.equals(current.id());
    UUID other = ours ? row.borrowerId : row.clusterId;
    return new Lending(
        row.id,
        ours,
        names.computeIfAbsent(other, clusters::named),
        row.starts,
        row.ends,
        row.toState(),
        row.pieces,
        row.note,
        row.answer,
        row.ending,
        churches.stream().filter(c -> !ours && c.id().value().equals(row.churchId)).toList(),
        row.offeredAt,
        Optional.ofNullable(row.answeredAt).stream().toList(),
        Optional.ofNullable(row.endedAt).stream().toList(),
        current.id().equals(row.endedBy),
        row.toState() == LendingState.ACCEPTED && !row.ends.isAfter(clock.instant()),
        cluster.cluster().zone());
  }
}
