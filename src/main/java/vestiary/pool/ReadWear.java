package vestiary.pool;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.vesting.MassId;

/**
 * What was worn: what was planned, held or out for a Mass that is over, unless somebody has put it
 * right since.
 */
@ApplicationScoped
@Transactional
public class ReadWear {

  /** Of late: long enough for every colour to come, short enough to follow the pool. */
  private static final Duration OF_LATE = Duration.ofDays(365);

  private record MassAndPiece(UUID mass, UUID piece) {}

  private final WornRows worn;
  private final OccupationRows occupations;
  private final PieceRows pieces;
  private final Clock clock;

  ReadWear(WornRows worn, OccupationRows occupations, PieceRows pieces, Clock clock) {
    this.worn = worn;
    this.occupations = occupations;
    this.pieces = pieces;
    this.clock = clock;
  }

  /** When a piece was worn, and at which Mass. */
  public record Wear(MassId mass, Instant at) {}

  /** How often each piece was worn in the last twelve months, by its code; 0 is left out. */
  public Map<String, Integer> ofLate() {
    Instant now = clock.instant();
    Instant since = now.minus(OF_LATE);
    List<WornRow> said = worn.between(since, now);
    Set<MassAndPiece> denied = denied(said);
    Map<UUID, String> codes =
        pieces.streamAll().collect(Collectors.toMap(piece -> piece.id, piece -> piece.code));
    Map<String, Integer> counts = new HashMap<>();
    Stream.concat(
            occupations.overBetween(since, now).stream()
                .map(row -> new MassAndPiece(row.massId, row.pieceId)),
            said.stream()
                .filter(row -> row.worn)
                .map(row -> new MassAndPiece(row.massId, row.pieceId)))
        .distinct()
        .filter(one -> !denied.contains(one))
        .forEach(one -> counts.merge(codes.get(one.piece()), 1, Integer::sum));
    return counts;
  }

  /** When the piece of that code was worn last; empty if that is not known. */
  public Optional<Wear> findLast(String code) {
    UUID piece = pieces.getByCode(code).id;
    List<WornRow> said = worn.ofPiece(piece);
    Set<MassAndPiece> denied = denied(said);
    return Stream.concat(
            occupations.overOf(piece, clock.instant()).stream()
                .filter(row -> !denied.contains(new MassAndPiece(row.massId, piece)))
                .map(row -> new Wear(new MassId(row.massId), row.starts)),
            said.stream()
                .filter(row -> row.worn)
                .map(row -> new Wear(new MassId(row.massId), row.wornAt)))
        .max(Comparator.comparing(Wear::at));
  }

  /** What was put right about a Mass, by code. */
  public List<Worn> said(MassId mass) {
    Map<UUID, String> codes =
        pieces.streamAll().collect(Collectors.toMap(piece -> piece.id, piece -> piece.code));
    return worn.of(mass).stream()
        .map(
            row ->
                new Worn(
                    codes.get(row.pieceId),
                    row.worn,
                    row.insteadOf == null ? "" : codes.getOrDefault(row.insteadOf, "")))
        .sorted(Comparator.comparing(Worn::piece))
        .toList();
  }

  private static Set<MassAndPiece> denied(List<WornRow> said) {
    return said.stream()
        .filter(row -> !row.worn)
        .map(row -> new MassAndPiece(row.massId, row.pieceId))
        .collect(Collectors.toSet());
  }
}
