package vestiary.web;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;

/**
 * The Spanish of one folder of templates, as {@code words/pages} has it: a JSON object from each
 * run of English to the Spanish that stands in its place.
 */
final class PageWords implements TemplateText.Words {

  private final Map<String, String> spanish;

  private PageWords(Map<String, String> spanish) {
    this.spanish = spanish;
  }

  /**
   * The words of that folder; none where it has no file.
   *
   * @throws UncheckedIOException if the file cannot be read as that
   */
  static PageWords in(String folder) {
    try (InputStream file =
        PageWords.class.getResourceAsStream("/words/pages/%s_es.json".formatted(folder))) {
      return new PageWords(file == null ? Map.of() : read(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, String> read(InputStream file) throws IOException {
    return new ObjectMapper().readValue(file, new TypeReference<Map<String, String>>() {});
  }

  Map<String, String> all() {
    return Map.copyOf(spanish);
  }

  @Override
  public String of(String key) {
    return spanish.getOrDefault(key, key);
  }

  @Override
  public String both(String here, String other) {
    return "{#spoken}" + here + "{#es}" + other + "{/spoken}";
  }
}
