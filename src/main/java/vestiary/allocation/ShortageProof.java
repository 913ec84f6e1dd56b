package vestiary.allocation;

import java.util.List;

/** Checks a finding again, by counting alone. */
public final class ShortageProof {

  private ShortageProof() {}

  /** What is wrong with a finding, in words; empty if it holds. */
  public static List<String> findObjections(Shortage shortage, Span span) {
    throw new UnsupportedOperationException("not yet written");
  }
}
