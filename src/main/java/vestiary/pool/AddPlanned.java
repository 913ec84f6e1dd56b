package vestiary.pool;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.problem.Refused;

/** Plans a few pieces beside all that is planned, and takes that back. */
@ApplicationScoped
public class AddPlanned {

  private final OccupationRows occupations;
  private final MovementRows movements;
  private final PieceRows pieces;
  private final KeepPlanned keep;

  AddPlanned(
      OccupationRows occupations, MovementRows movements, PieceRows pieces, KeepPlanned keep) {
    this.occupations = occupations;
    this.movements = movements;
    this.pieces = pieces;
    this.keep = keep;
  }

  /**
   * Adds to what is planned, in the present transaction. The pieces are locked until its end, so
   * that of two who want the same one the second is told.
   *
   * @throws Refused if a piece is planned otherwise, held, out, in care or no longer there
   */
  @Transactional(Transactional.TxType.MANDATORY)
  public void add(Planned planned) {
    Map<String, UUID> ids = lock(codes(planned));
    keep.refuseIfTaken(planned);
    planned
        .worn()
        .forEach(
            one -> occupations.persist(KeepPlanned.row(one, KeepPlanned.id(ids, one.piece()))));
    planned
        .carried()
        .forEach(one -> movements.persist(KeepPlanned.row(one, KeepPlanned.id(ids, one.piece()))));
    occupations.flush();
  }

  /**
   * Takes out of what is planned, in the present transaction; what a plan has replaced since is not
   * there any more and left alone.
   */
  @Transactional(Transactional.TxType.MANDATORY)
  public void remove(Planned planned) {
    Map<String, UUID> ids = lock(codes(planned));
    planned.worn().stream()
        .filter(one -> ids.containsKey(one.piece()))
        .forEach(one -> occupations.deletePlanned(ids.get(one.piece()), one));
    planned.carried().stream()
        .filter(one -> ids.containsKey(one.piece()))
        .forEach(one -> movements.delete(ids.get(one.piece()), one));
  }

  private Map<String, UUID> lock(Collection<String> codes) {
    return codes.isEmpty()
        ? Map.of()
        : pieces.locked(codes).stream().collect(Collectors.toMap(row -> row.code, row -> row.id));
  }

  private static List<String> codes(Planned planned) {
    return Stream.concat(
            planned.worn().stream().map(PlannedWear::piece),
            planned.carried().stream().map(CarriedPiece::piece))
        .distinct()
        .sorted()
        .toList();
  }
}
