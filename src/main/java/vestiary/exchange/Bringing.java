package vestiary.exchange;

import static vestiary.web.Speech.say;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What vested persons bring of their own to one Mass.
 *
 * @param role in which they vest
 * @param count how many of them bring it, 1 or more
 * @param kinds kinds of piece, 1 or more
 */
record Bringing(String role, int count, List<String> kinds) {

  /** What may stand there, as a sentence. */
  static String wanted() {
    return say(
        "Write a role (%s), how many of them %s if more than one, a colon and kinds of piece joined by +, for example principal:chasuble+stole. Kinds are: %s.",
        Words.VESTED, Range.BRINGING, Words.PIECE_KINDS);
  }

  private static final Pattern FORM = Pattern.compile("([\\p{L}-]+)(?: +(\\d+))? *:(.+)");

  Bringing {
    kinds = List.copyOf(kinds);
  }

  /** The entry written so, or empty if it is not understood. */
  static Optional<Bringing> find(String entry) {
    Matcher form = FORM.matcher(entry);
    if (!form.matches()) {
      return Optional.empty();
    }
    Optional<String> role = Words.VESTED.find(form.group(1));
    Optional<Integer> count = Range.BRINGING.find(form.group(2) == null ? "1" : form.group(2));
    List<Optional<String>> kinds =
        Stream.of(form.group(3).split("\\+", -1))
            .map(kind -> Words.PIECE_KINDS.find(kind.strip()))
            .toList();
    if (role.isEmpty() || count.isEmpty() || kinds.stream().anyMatch(Optional::isEmpty)) {
      return Optional.empty();
    }
    return Optional.of(
        new Bringing(
            role.get(), count.get(), kinds.stream().flatMap(Optional::stream).distinct().toList()));
  }
}
