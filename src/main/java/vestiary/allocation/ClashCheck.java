package vestiary.allocation;

import java.util.List;

/** Finds where needs are more than the pieces that can serve them in time. */
public final class ClashCheck {

  private ClashCheck() {}

  /** All findings of a span, in order of time. */
  public static List<Shortage> find(Span span) {
    throw new UnsupportedOperationException("not yet written");
  }
}
