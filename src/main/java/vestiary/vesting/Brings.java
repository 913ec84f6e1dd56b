package vestiary.vesting;

import java.util.Set;

/**
 * Persons who come with vestments of their own and so ask nothing of the pool for those kinds. It
 * is a fact of the Mass and no substitute; common practice, no source.
 *
 * @param role whose
 * @param count how many of that role, 1 or more; more than there are means all of them
 * @param kinds what they bring; empty means everything they wear
 */
public record Brings(Role role, int count, Set<PieceKind> kinds) {

  public Brings {
    if (count < 1) {
      throw new IllegalArgumentException("Who bring their own are 1 or more, not " + count);
    }
    kinds = Set.copyOf(kinds);
  }

  boolean covers(Role wearer, PieceKind kind) {
    return role == wearer && (kinds.isEmpty() || kinds.contains(kind));
  }
}
