package vestiary.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;

/** What people call the columns of lists and what stands in them, in several languages. */
final class KnownWords {

  /** Names of columns. */
  static final KnownWords COLUMNS = read("/words/columns.properties");

  /** Words in cells. */
  static final KnownWords CELLS = read("/words/cells.properties");

  private final Map<String, List<String>> byWord;

  private KnownWords(Map<String, List<String>> byWord) {
    this.byWord = Map.copyOf(byWord);
  }

  /**
   * What else that word of ours is called, as {@link PlainWords#joined}; none if nothing is known.
   */
  List<String> of(String word) {
    return byWord.getOrDefault(word, List.of());
  }

  private static KnownWords read(String resource) {
    Properties entries = new Properties();
    try (InputStream bytes = KnownWords.class.getResourceAsStream(resource);
        Reader text = new InputStreamReader(bytes, StandardCharsets.UTF_8)) {
      entries.load(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Map<String, List<String>> byWord = new HashMap<>();
    entries.forEach(
        (word, others) ->
            byWord.put(
                (String) word,
                Arrays.stream(((String) others).split(",")).map(PlainWords::joined).toList()));
    return new KnownWords(byWord);
  }
}
