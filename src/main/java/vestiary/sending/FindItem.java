package vestiary.sending;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadPool;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Finds what a code names. A set may have the code of one of its pieces; it goes whole then. */
@ApplicationScoped
@Transactional
public class FindItem {

  private final ReadPool pool;
  private final Clock clock;

  FindItem(ReadPool pool, Clock clock) {
    this.pool = pool;
    this.clock = clock;
  }

  /** The set or piece of that code, in whatever case it was typed; empty if there is none. */
  public Optional<Item> find(String code) {
    List<PooledPiece> all = pool.pieces(clock.instant());
    return set(code, all).or(() -> piece(code, all));
  }

  /** Every set, and every piece of no set, by code. */
  public List<Item> all() {
    List<PooledPiece> all = pool.pieces(clock.instant());
    return all.stream()
        .map(piece -> piece.set().isEmpty() ? piece.code() : piece.set())
        .distinct()
        .sorted()
        .flatMap(code -> set(code, all).or(() -> piece(code, all)).stream())
        .toList();
  }

  /**
   * The set of that code.
   *
   * @throws Refused if there is none, or no piece belongs to it
   */
  public Item getSet(String code) {
    return set(code, pool.pieces(clock.instant()))
        .orElseThrow(() -> new Refused(new Refusal.NotThere("set", code)));
  }

  /**
   * The piece of that code.
   *
   * @throws Refused if there is none
   */
  public Item getPiece(String code) {
    return piece(code, pool.pieces(clock.instant()))
        .orElseThrow(() -> new Refused(new Refusal.NotThere("piece", code)));
  }

  /**
   * The same, withdrawn from use or not, since its history stays.
   *
   * @throws Refused if there is none
   */
  Item getKept(String code) {
    PooledPiece piece = pool.get(code);
    return new Item(piece.code(), "", false, List.of(piece));
  }

  private Optional<Item> set(String code, List<PooledPiece> all) {
    List<PooledPiece> within =
        all.stream().filter(piece -> piece.set().equalsIgnoreCase(code)).toList();
    if (code.isBlank() || within.isEmpty()) {
      return Optional.empty();
    }
    String set = within.get(0).set();
    return Optional.of(new Item(set, pool.setNames().getOrDefault(set, ""), true, within));
  }

  private static Optional<Item> piece(String code, List<PooledPiece> all) {
    return all.stream()
        .filter(piece -> piece.code().equalsIgnoreCase(code))
        .findFirst()
        .map(piece -> new Item(piece.code(), "", false, List.of(piece)));
  }
}
