package vestiary.mail;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/**
 * What is known of a letter without what it says.
 *
 * @param tries 0 or more
 * @param nextAt when it is tried next, while it waits
 * @param endedAt when it was sent, refused or given up; none while it waits
 * @param answer of the mail server, without addresses; may be empty
 */
public record KeptLetter(
    UUID id,
    UUID reader,
    LetterKind kind,
    LetterState state,
    int tries,
    Instant madeAt,
    Instant nextAt,
    List<Instant> endedAt,
    String answer) {

  public KeptLetter {
    endedAt = List.copyOf(endedAt);
  }

  static KeptLetter of(LetterRow row) {
    return new KeptLetter(
        row.id,
        row.reader,
        row.toKind(),
        row.toState(),
        row.tries,
        row.madeAt,
        row.nextAt,
        row.endedAt == null ? List.of() : List.of(row.endedAt),
        row.answer);
  }
}
