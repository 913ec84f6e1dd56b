package vestiary.vesting;

import java.util.List;

/**
 * Who vests at a Mass besides the principal celebrant.
 *
 * @param bishop whether the principal celebrant is a bishop, which makes the liturgy a large one
 * @param concelebrants 0 or more, the principal celebrant not among them
 * @param deacons 0 or more
 * @param brings who come with their own
 */
public record Ministers(boolean bishop, int concelebrants, int deacons, List<Brings> brings) {

  /** From this many concelebrants a liturgy is a large one; common practice, no source. */
  public static final int MANY = 6;

  public Ministers {
    if (concelebrants < 0 || deacons < 0) {
      throw new IllegalArgumentException(
          "Concelebrants and deacons are 0 or more, not " + concelebrants + " and " + deacons);
    }
    brings = List.copyOf(brings);
  }

  boolean areMany() {
    return bishop || concelebrants >= MANY;
  }

  /** How many of a role bring a piece of that kind. */
  int bringing(Role role, PieceKind kind) {
    return brings.stream().filter(b -> b.covers(role, kind)).mapToInt(Brings::count).sum();
  }
}
