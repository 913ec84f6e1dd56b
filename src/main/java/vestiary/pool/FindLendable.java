package vestiary.pool;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.web.Speech;

/** Which pieces another cluster may have for a while. */
@ApplicationScoped
public class FindLendable {

  private static final String FIELD = "pieces";

  private final PieceRows rows;
  private final SetRows sets;
  private final OccupationRows occupations;
  private final ReadPool pool;
  private final ReadCluster cluster;
  private final Clock clock;

  FindLendable(
      PieceRows rows,
      SetRows sets,
      OccupationRows occupations,
      ReadPool pool,
      ReadCluster cluster,
      Clock clock) {
    this.rows = rows;
    this.sets = sets;
    this.occupations = occupations;
    this.pool = pool;
    this.cluster = cluster;
    this.clock = clock;
  }

  /** A piece with the id by which the database hands it over. */
  public record Lendable(UUID id, PooledPiece piece) {}

  /** All that may leave at all, by code: of our own, and not bound to its church. */
  @Transactional
  public List<PooledPiece> all() {
    Set<String> borrowed =
        rows.streamAll()
            .filter(p -> p.lendingId != null)
            .map(p -> p.code)
            .collect(Collectors.toSet());
    return pool.pieces(clock.instant()).stream()
        .filter(p -> !borrowed.contains(p.code()) && mayLeave(p))
        .toList();
  }

  /**
   * Those of these codes, by code; what keeps one of them back is noted as a fault.
   *
   * @param codes of sets or of pieces; where both have one code, the set is meant
   * @param ownersAsked whether the owners who want to be asked have said yes
   */
  public List<Lendable> find(
      List<String> codes, Instant from, Instant until, boolean ownersAsked, Asked asked) {
    Map<UUID, PieceRow> found = new LinkedHashMap<>();
    codes.forEach(code -> gather(code, found, asked));
    Map<String, PooledPiece> known =
        pool.pieces(from).stream()
            .collect(Collectors.toMap(PooledPiece::code, Function.identity()));
    if (!asked.isFaulty()) {
      found.values().forEach(row -> check(row, known.get(row.code), ownersAsked, asked));
      refuseTaken(found, from, until, asked);
    }
    return found.values().stream()
        .map(row -> new Lendable(row.id, known.get(row.code)))
        .sorted((a, b) -> a.piece().code().compareTo(b.piece().code()))
        .toList();
  }

  private void gather(String code, Map<UUID, PieceRow> found, Asked asked) {
    // A set may have the code of one of its pieces; it goes whole then.
    List<PieceRow> named =
        sets.findByCode(code)
            .map(set -> rows.ofSet(set.id))
            .filter(within -> !within.isEmpty())
            .orElseGet(() -> rows.findByCode(code).filter(PieceRow::isInUse).stream().toList());
    if (named.isEmpty()) {
      asked.fault(FIELD, say("There is no piece and no set \"%s\".", code));
    }
    named.forEach(row -> found.put(row.id, row));
  }

  private static void check(PieceRow row, PooledPiece piece, boolean ownersAsked, Asked asked) {
    if (row.lendingId != null) {
      asked.fault(FIELD, say("%s is borrowed, and not ours to lend.", row.code));
    } else if (!mayLeave(piece)) {
      asked.fault(
          FIELD,
          piece.staysHome()
              ? say("%s does not leave its church.", row.code)
              : say("%s does not lend %s.", piece.owner(), row.code));
    } else if (piece.ownerPolicy() == OwnerPolicy.ASKING && !ownersAsked) {
      asked.fault(
          "ownersAsked",
          say(
              "%s goes on asking alone: ask %s first, then say here that the owners agree.",
              row.code, piece.owner()));
    }
  }

  private void refuseTaken(Map<UUID, PieceRow> found, Instant from, Instant until, Asked asked) {
    ZoneId zone = cluster.cluster().zone();
    occupations.standingBetween(from, until).stream()
        .filter(taken -> found.containsKey(taken.row().pieceId) && !taken.row().isPlanned())
        .forEach(
            taken ->
                asked.fault(
                    FIELD,
                    say(
                        "%s is %s from %s.",
                        taken.code(),
                        taken.row().state.equals(OccupationRow.CARE)
                            ? say("away (%s)", taken.row().reason)
                            : taken.row().state,
                        Speech.dateAndYear(taken.row().starts.atZone(zone).toLocalDate()))));
  }

  private static boolean mayLeave(PooledPiece piece) {
    return !piece.staysHome() && piece.ownerPolicy() != OwnerPolicy.NEVER;
  }
}
