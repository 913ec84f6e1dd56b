package vestiary.people;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import vestiary.problem.ShortName;

/**
 * The name of somebody under 18: the whole of it for those responsible, first name and initial for
 * everybody else.
 */
record ChildName(String whole) {

  private static final int LONGEST = 200;

  /** Shorter ones stand within other words by chance. */
  private static final int LONG = 4;

  /** For example "Tamsin C."; a name of one word stands as it is. */
  String shown() {
    List<String> words = words();
    if (words.size() < 2) {
      return whole;
    }
    String last = words.get(words.size() - 1);
    return words.get(0) + " " + last.substring(0, last.offsetByCodePoints(0, 1)) + ".";
  }

  /** Whether a short name in addresses tells more than the first name and the initial. */
  boolean isToldBy(String slug) {
    List<String> told = Arrays.asList(slug.split("-"));
    return words().stream()
        .skip(1)
        .map(word -> ShortName.of(word, "person", LONGEST))
        .filter(word -> word.length() > 1)
        .anyMatch(word -> told.contains(word) || word.length() >= LONG && slug.contains(word));
  }

  /** Whether it is this name in either form, letter case aside. */
  boolean isCalled(String name) {
    String said = name.toLowerCase(Locale.ROOT);
    return said.equals(whole.toLowerCase(Locale.ROOT))
        || said.equals(shown().toLowerCase(Locale.ROOT));
  }

  private List<String> words() {
    return List.of(whole.strip().split("\\s+"));
  }
}
