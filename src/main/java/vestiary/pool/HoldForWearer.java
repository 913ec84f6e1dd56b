package vestiary.pool;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Speech;

/** Holds pieces for one who wears them at a Mass, and lets them go again. */
@ApplicationScoped
public class HoldForWearer {

  private final OccupationRows occupations;
  private final PieceRows pieces;
  private final ReadCluster cluster;

  HoldForWearer(OccupationRows occupations, PieceRows pieces, ReadCluster cluster) {
    this.occupations = occupations;
    this.pieces = pieces;
    this.cluster = cluster;
  }

  /**
   * Holds them in the present transaction. The pieces are locked until its end, so that of two who
   * want the same one the second is told.
   *
   * @return by what they are let go again
   * @throws Refused if one is planned, held, out, in care or no longer there
   */
  @Transactional(Transactional.TxType.MANDATORY)
  public List<UUID> hold(List<PlannedWear> worn) {
    Map<String, UUID> ids =
        pieces.locked(worn.stream().map(PlannedWear::piece).toList()).stream()
            .collect(Collectors.toMap(row -> row.code, row -> row.id));
    List<OccupationRow> rows = worn.stream().map(one -> row(one, ids)).toList();
    rows.forEach(occupations::persist);
    occupations.flush();
    return rows.stream().map(row -> row.id).toList();
  }

  /** Lets go in the present transaction what is still held; what is out or back is left alone. */
  @Transactional(Transactional.TxType.MANDATORY)
  public void letGo(Collection<UUID> held) {
    occupations.deleteHeld(held);
  }

  private OccupationRow row(PlannedWear one, Map<String, UUID> ids) {
    UUID piece = Optional.ofNullable(ids.get(one.piece())).orElseThrow(() -> gone(one.piece()));
    occupations.standingBetween(one.from(), one.until()).stream()
        .filter(found -> found.code().equals(one.piece()))
        .findFirst()
        .ifPresent(
            found -> {
              throw taken(found);
            });
    OccupationRow row = KeepPlanned.row(one, piece);
    row.state = OccupationRow.HELD;
    return row;
  }

  private Refused taken(OccupationRows.Coded found) {
    ZoneId zone = cluster.cluster().zone();
    Instant since = found.row().starts;
    return new Refused(
        new Refusal.Taken(
            "",
            say(
                "%s was taken by somebody just now: it is %s from %s, %s. Nothing was changed; look what is still there.",
                found.code(),
                found.row().state.equals(OccupationRow.CARE) ? say("in care") : found.row().state,
                Speech.day(since.atZone(zone).toLocalDate()),
                Speech.clock(since.atZone(zone)))));
  }

  private static Refused gone(String piece) {
    return new Refused(
        new Refusal.Taken(
            "",
            say(
                "%s is no longer in the pool. Nothing was changed; look what is still there.",
                piece)));
  }
}
