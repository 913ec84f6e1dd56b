package vestiary.problem;

import static vestiary.web.Speech.say;

import java.io.IOException;
import java.util.Optional;

/**
 * What the framework cannot read before anything of ours is asked. It throws that as it comes, and
 * nothing but the words tells it from a fault.
 */
final class Undecoded {

  private Undecoded() {}

  /** The refusal that lies behind an exception, or empty if it is none of the framework's. */
  static Optional<Refusal> find(Throwable failure) {
    String words = String.valueOf(failure.getMessage());
    if (failure instanceof IllegalArgumentException && isOfPercents(words)) {
      return unreadable(
          400, say("After each % in what was sent, two digits from 0 to F must follow."));
    }
    if (failure instanceof IOException && words.contains("multipart")) {
      return unreadable(400, say("The form and its file did not arrive whole. Send it again."));
    }
    if (words.startsWith("Param limit")) {
      return unreadable(
          413, say("The form has more fields than any of ours. Send it from its own page."));
    }
    return Optional.empty();
  }

  /** Two decoders of the framework, each in its own words. */
  private static boolean isOfPercents(String words) {
    return words.startsWith("URLDecoder") || words.startsWith("Failed to decode URL");
  }

  private static Optional<Refusal> unreadable(int status, String sentence) {
    return Optional.of(
        new Refusal.Unreadable(status, ProblemKind.UNREADABLE_REQUEST.title(), sentence));
  }
}
