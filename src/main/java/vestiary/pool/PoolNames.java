package vestiary.pool;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;

/** What pieces, sets and suits are called, for whoever knows them by id. */
@ApplicationScoped
public class PoolNames {

  private final PieceRows pieces;
  private final SetRows sets;
  private final SuitRows suits;

  PoolNames(PieceRows pieces, SetRows sets, SuitRows suits) {
    this.pieces = pieces;
    this.sets = sets;
    this.suits = suits;
  }

  /** Codes of pieces and sets, names of suits, by id. */
  public Map<UUID, String> all() {
    Map<UUID, String> names = new HashMap<>();
    pieces.streamAll().forEach(p -> names.put(p.id, p.code));
    sets.streamAll().forEach(s -> names.put(s.id, s.code));
    suits.streamAll().forEach(s -> names.put(s.id, s.name));
    return names;
  }
}
