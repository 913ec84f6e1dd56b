package vestiary.review;

import java.util.List;
import vestiary.planning.Clash;
import vestiary.planning.SpanToCheck;

/**
 * A week as it is now, and what became of it since somebody signed it.
 *
 * @param span seven days from a Monday
 * @param clashes by the first of their Masses
 * @param now as it would be signed
 * @param shown the same in the language of whoever looks at it
 * @param signatures the last first; none if nobody has signed it
 * @param changes since the last signature, by date; none if the week reads as it did, or nobody has
 *     signed it
 * @param reader puts names to all of it
 */
record Review(
    SpanToCheck span,
    List<Clash> clashes,
    WeekSeen now,
    WeekSeen shown,
    List<Signature> signatures,
    List<WeekChange> changes,
    Reader reader) {

  Review {
    clashes = List.copyOf(clashes);
    signatures = List.copyOf(signatures);
    changes = List.copyOf(changes);
  }

  /** Of the last signature; 0 if nobody has signed the week. */
  int turn() {
    return signatures.stream().mapToInt(Signature::turn).findFirst().orElse(0);
  }
}
