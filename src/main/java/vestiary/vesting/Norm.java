package vestiary.vesting;

import java.util.List;
import java.util.Objects;

/**
 * Why a piece is worn and what may stand in for it.
 *
 * @param must whether it must be mended when neither the piece nor a substitute can be had
 * @param ladder lawful substitutes, the nearest first
 * @param source the norm that asks for the piece
 */
public record Norm(boolean must, List<Step> ladder, String source) {

  public Norm {
    ladder = List.copyOf(ladder);
    Objects.requireNonNull(source, "source");
  }

  static Norm must(String source, Step... ladder) {
    return new Norm(true, List.of(ladder), source);
  }

  static Norm may(String source, Step... ladder) {
    return new Norm(false, List.of(ladder), source);
  }
}
