package vestiary.telling;

import java.time.ZoneId;
import vestiary.mail.KeptLetter;

/**
 * A letter without what it says, as the API answers it.
 *
 * @param state waiting, sent, refused or given-up
 * @param next local time with offset; absent unless it waits
 * @param ended local time with offset; absent while it waits
 */
record LetterBody(
    String id,
    String kind,
    String state,
    int tries,
    String made,
    String next,
    String ended,
    String answer) {

  static LetterBody of(KeptLetter one, ZoneId zone) {
    return new LetterBody(
        one.id().toString(),
        one.kind().id(),
        one.state().id(),
        one.tries(),
        one.madeAt().atZone(zone).toOffsetDateTime().toString(),
        one.endedAt().isEmpty() ? one.nextAt().atZone(zone).toOffsetDateTime().toString() : null,
        one.endedAt().stream()
            .map(at -> at.atZone(zone).toOffsetDateTime().toString())
            .findFirst()
            .orElse(null),
        one.answer());
  }
}
