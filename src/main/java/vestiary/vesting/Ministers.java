package vestiary.vesting;

import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * Who vests at a Mass or other liturgy.
 *
 * @param presider who leads it; a bishop makes the liturgy a large one
 * @param concelebrants 0 or more, the principal celebrant not among them
 * @param deacons 0 or more, a deacon who leads not among them
 * @param brings who come with their own
 * @param further who else vests
 * @param also what whoever leads puts on besides, for a procession or a blessing with the Blessed
 *     Sacrament: cope, humeral veil, both or neither
 */
public record Ministers(
    Presider presider,
    int concelebrants,
    int deacons,
    List<Brings> brings,
    List<FurtherMinisters> further,
    Set<PieceKind> also) {

  /** From this many concelebrants a liturgy is a large one; common practice, no source. */
  public static final int MANY = 6;

  /** What may be put on besides. */
  public static final List<PieceKind> BESIDES = List.of(PieceKind.COPE, PieceKind.HUMERAL_VEIL);

  public Ministers {
    Objects.requireNonNull(presider, "presider");
    if (concelebrants < 0 || deacons < 0) {
      throw new IllegalArgumentException(
          "Concelebrants and deacons are 0 or more, not " + concelebrants + " and " + deacons);
    }
    brings = List.copyOf(brings);
    further = List.copyOf(further);
    also = Set.copyOf(also);
    if (!BESIDES.containsAll(also)) {
      throw new IllegalArgumentException("Cope and humeral veil are put on besides, not " + also);
    }
  }

  /** Celebrants and deacons alone, a priest or a bishop presiding. */
  public Ministers(boolean bishop, int concelebrants, int deacons, List<Brings> brings) {
    this(
        bishop ? Presider.BISHOP : Presider.PRIEST,
        concelebrants,
        deacons,
        brings,
        List.of(),
        Set.of());
  }

  /** Whether the principal celebrant is a bishop. */
  public boolean bishop() {
    return presider == Presider.BISHOP;
  }

  /** How many of a role vest besides celebrants and deacons. */
  public int further(Role role) {
    return further.stream().filter(f -> f.role() == role).mapToInt(FurtherMinisters::count).sum();
  }

  boolean areMany() {
    return bishop() || concelebrants >= MANY;
  }

  /** How many of a role bring a piece of that kind. */
  int bringing(Role role, PieceKind kind) {
    return brings.stream().filter(b -> b.covers(role, kind)).mapToInt(Brings::count).sum();
  }

  /** The size of the alb of one of them, counted from 1; empty if it is not known. */
  String size(Role role, int ordinal) {
    return further.stream()
        .filter(f -> f.role() == role)
        .flatMap(f -> f.sizes().stream())
        .skip(ordinal - 1L)
        .findFirst()
        .orElse("");
  }
}
