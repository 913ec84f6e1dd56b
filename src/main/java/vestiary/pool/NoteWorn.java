package vestiary.pool;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import vestiary.problem.Asked;
import vestiary.problem.Refused;
import vestiary.vesting.MassId;

/** Keeps what was really worn at a Mass. */
@ApplicationScoped
@Transactional
public class NoteWorn {

  private final WornRows rows;
  private final PieceRows pieces;

  NoteWorn(WornRows rows, PieceRows pieces) {
    this.rows = rows;
    this.pieces = pieces;
  }

  /**
   * Puts this in the place of all that was said about the Mass before.
   *
   * @param start when it began
   * @param said what was otherwise than planned; empty: nothing was
   * @throws Refused if a piece is not in the pool, is named twice, or stood in for one of another
   *     kind
   */
  public void keep(MassId mass, Instant start, List<Worn> said) {
    Asked asked = new Asked();
    Set<String> named = new HashSet<>();
    List<WornRow> fresh = said.stream().map(one -> row(one, asked, named)).toList();
    asked.refuseIfFaulty();
    rows.deleteOf(mass);
    for (WornRow row : fresh) {
      row.massId = mass.value();
      row.wornAt = start;
      rows.persist(row);
    }
    rows.flush();
  }

  private WornRow row(Worn one, Asked asked, Set<String> named) {
    WornRow row = new WornRow();
    row.worn = one.worn();
    Optional<PieceRow> piece = find(one.piece(), asked);
    piece.ifPresent(found -> row.pieceId = found.id);
    if (!named.add(one.piece())) {
      asked.fault("piece", say("%s is named twice.", one.piece()));
    }
    if (!one.insteadOf().isEmpty()) {
      Optional<PieceRow> planned = find(one.insteadOf(), asked);
      planned.ifPresent(found -> row.insteadOf = found.id);
      if (piece.isPresent()
          && planned.isPresent()
          && !piece.get().kind.equals(planned.get().kind)) {
        asked.fault(
            "piece",
            say(
                "%s is a %s and cannot stand in for %s, a %s.",
                one.piece(),
                piece.get().kind.replace('-', ' '),
                one.insteadOf(),
                planned.get().kind.replace('-', ' ')));
      }
    }
    return row;
  }

  private Optional<PieceRow> find(String code, Asked asked) {
    Optional<PieceRow> found = pieces.findByCode(asked.needed("piece", code, 100));
    if (found.isEmpty() && !code.isBlank()) {
      asked.fault("piece", say("piece \"%s\" is not in the pool.", code));
    }
    return found;
  }
}
