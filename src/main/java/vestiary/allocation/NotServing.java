package vestiary.allocation;

import java.util.List;
import java.util.Objects;
import vestiary.vesting.Away;
import vestiary.vesting.Piece;

/**
 * A piece of the right kind and colour that serves none of the needs, and why; judged for the first
 * of them.
 *
 * @param away the absences that stand in the way, in order of time; empty for any other hindrance
 */
public record NotServing(Piece piece, Hindrance hindrance, List<Away> away) {

  public NotServing {
    Objects.requireNonNull(piece, "piece");
    Objects.requireNonNull(hindrance, "hindrance");
    away = List.copyOf(away);
  }
}
