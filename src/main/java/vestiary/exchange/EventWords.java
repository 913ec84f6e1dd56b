package vestiary.exchange;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import vestiary.calendar.MassKind;

/** What the words of an event tell: which church, and which Mass or other liturgy. */
final class EventWords {

  /** What parts a title or an address. */
  private static final Pattern PARTS =
      Pattern.compile("[,;:()\\n|@/–—]| - | in | at | im | en | bei ");

  private static final int LONGEST_PHRASE = 7;

  private static final Map<String, String> KINDS = kinds();

  private final TidyCells names;

  EventWords(TidyCells names) {
    this.names = names;
  }

  /** The church that the place names, else the title; empty if neither does. */
  Optional<String> findChurch(String place, String summary) {
    return Stream.concat(parts(place), parts(summary))
        .map(names::findChurch)
        .flatMap(Optional::stream)
        .findFirst();
  }

  /**
   * The Mass or other liturgy that the title names, by its longest phrase that is known and says
   * more than Mass; empty if it names none. A Mass of no particular kind is left to the calendar,
   * and is "".
   */
  static Optional<String> findKind(String summary) {
    List<String> words = List.of(PlainWords.of(summary).split(" "));
    boolean isPlain = false;
    for (int length = Math.min(LONGEST_PHRASE, words.size()); length > 0; length--) {
      for (int first = 0; first + length <= words.size(); first++) {
        String kind = KINDS.get(String.join("", words.subList(first, first + length)));
        if (kind != null && !kind.equals(MassKind.OF_THE_DAY.id())) {
          return Optional.of(kind);
        }
        isPlain |= kind != null;
      }
    }
    return isPlain ? Optional.of("") : Optional.empty();
  }

  private static Stream<String> parts(String text) {
    return Stream.concat(Stream.of(text), PARTS.splitAsStream(text))
        .map(String::strip)
        .filter(part -> !part.isEmpty());
  }

  private static Map<String, String> kinds() {
    Map<String, String> kinds = new HashMap<>();
    for (String kind : Words.MASSES.all()) {
      kinds.put(PlainWords.joined(kind), kind);
      KnownWords.CELLS.of(kind).forEach(word -> kinds.put(word, kind));
    }
    kinds.remove(PlainWords.joined(MassKind.OTHER.id()));
    return kinds;
  }
}
