package vestiary.pool;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/** Care as somebody would have to say it once more. */
@ApplicationScoped
@Transactional
public class CareAgain {

  private final OccupationRows occupations;
  private final PieceRows pieces;
  private final Clock clock;

  CareAgain(OccupationRows occupations, PieceRows pieces, Clock clock) {
    this.occupations = occupations;
    this.pieces = pieces;
    this.clock = clock;
  }

  /**
   * One time in care.
   *
   * @param piece its code
   * @param ends the moment that it is over or was promised, or none
   * @param kind what is wrong with the piece; empty where it is over when it ends
   */
  public record SaidCare(
      String piece, Instant from, List<Instant> ends, String reason, String kind) {
    public SaidCare {
      ends = List.copyOf(ends);
    }
  }

  /** What is not over, by start, then code; what is lent to another cluster is no care. */
  public List<SaidCare> open() {
    Map<UUID, String> codes =
        pieces.byCode().stream().collect(Collectors.toMap(row -> row.id, row -> row.code));
    return occupations.careAfter(clock.instant()).stream()
        .filter(row -> row.lendingId == null && codes.containsKey(row.pieceId))
        .map(
            row ->
                new SaidCare(
                    codes.get(row.pieceId),
                    row.starts,
                    row.ends == null ? List.of() : List.of(row.ends),
                    row.reason,
                    row.awaited ? row.careKind : ""))
        .sorted(Comparator.comparing(SaidCare::from).thenComparing(SaidCare::piece))
        .toList();
  }
}
