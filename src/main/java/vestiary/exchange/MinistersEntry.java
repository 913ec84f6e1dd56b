package vestiary.exchange;

import static vestiary.web.Speech.say;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Ministers who vest at one Mass besides celebrants and deacons.
 *
 * @param kind server, acolyte, reader or other; at an ordination new-priest or new-deacon
 * @param count how many, 1 or more
 * @param sizes of their albs, not more than persons
 */
record MinistersEntry(String kind, int count, List<String> sizes) {

  /** What may stand there, as a sentence. */
  static String wanted() {
    return say(
        "Write a kind of minister (%s) and how many %s, then, where sizes of albs are known, a colon and the sizes joined by +, for example server 4, or server 3:120+130+130.",
        Words.FURTHER_MINISTERS, Range.BRINGING);
  }

  private static final Pattern FORM = Pattern.compile("([\\p{L}-]+)(?: +(\\d+))? *(?::(.+))?");

  MinistersEntry {
    sizes = List.copyOf(sizes);
  }

  /** The entry written so, or empty if it is not understood. */
  static Optional<MinistersEntry> find(String entry) {
    Matcher form = FORM.matcher(entry);
    if (!form.matches()) {
      return Optional.empty();
    }
    List<String> sizes = sizes(form.group(3));
    String number =
        form.group(2) == null ? String.valueOf(Math.max(1, sizes.size())) : form.group(2);
    Optional<String> kind = Words.FURTHER_MINISTERS.find(form.group(1));
    Optional<Integer> count =
        Range.BRINGING.find(number).filter(persons -> sizes.size() <= persons);
    return kind.flatMap(k -> count.map(c -> new MinistersEntry(k, c, sizes)));
  }

  private static List<String> sizes(String written) {
    return written == null
        ? List.of()
        : Stream.of(written.split("\\+"))
            .map(String::strip)
            .filter(size -> !size.isEmpty())
            .toList();
  }
}
