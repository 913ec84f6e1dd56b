package vestiary.pool;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.MassId;

/** One time in care, with what it took from plans. */
@ApplicationScoped
@Transactional
public class ReadCare {

  private final ReadPool pool;
  private final OccupationRows occupations;

  ReadCare(ReadPool pool, OccupationRows occupations) {
    this.pool = pool;
    this.occupations = occupations;
  }

  /**
   * @param lost Masses whose plan or hold it broke, as far as they were not planned anew since
   */
  public record Found(PooledPiece piece, Care care, List<MassId> lost) {

    public Found {
      lost = List.copyOf(lost);
    }
  }

  /**
   * The care that an address names.
   *
   * @throws Refused if the piece has no such care
   */
  public Found get(String code, String id) {
    PooledPiece piece = pool.get(code);
    UUID wanted = Asked.id("care", id);
    Care care =
        piece.care().stream()
            .filter(c -> c.id().equals(wanted))
            .findFirst()
            .orElseThrow(() -> new Refused(new Refusal.NotThere("care", id)));
    List<MassId> lost =
        Optional.ofNullable(occupations.findById(wanted)).map(occupations::lostBy).orElseThrow();
    return new Found(piece, care, lost);
  }
}
