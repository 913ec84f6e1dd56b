package vestiary.sending;

import java.time.Instant;
import java.util.List;
import vestiary.pool.Care;
import vestiary.pool.OutPiece;
import vestiary.vesting.ChurchId;

/**
 * Where a piece is at a moment, and who had it before.
 *
 * @param piece its code
 * @param church where it is, or was last when it is outside the cluster
 * @param out its time out, or none if it is not out
 * @param care in which it is, or none
 * @param since from when it is there, or none where nobody said
 * @param history every time it went out, the latest first
 */
public record Place(
    String piece,
    ChurchId church,
    List<OutPiece> out,
    List<Care> care,
    List<Instant> since,
    List<Sent> history) {

  public Place {
    out = List.copyOf(out);
    care = List.copyOf(care);
    since = List.copyOf(since);
    history = List.copyOf(history);
  }

  public boolean isOut() {
    return !out.isEmpty();
  }

  /** Where pieces of one set are together: the same words, the same place. */
  String together() {
    return isOut()
        ? "out " + out.get(0).churches() + history.stream().findFirst().map(Sent::whom).orElse("")
        : care.isEmpty() ? "at " + church : "care " + care.get(0).reason();
  }
}
