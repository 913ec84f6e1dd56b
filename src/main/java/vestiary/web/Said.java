package vestiary.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The Spanish of what is said in Java, as {@code words/said} has it: by room, a JSON object from
 * each English sentence to its Spanish, and one of the nouns that are counted.
 */
final class Said {

  /** Rooms that have their words. */
  static final List<String> ROOMS =
      List.of(
          "absence",
          "access",
          "asking",
          "assigning",
          "backup",
          "calendar",
          "care",
          "cluster",
          "device",
          "erasure",
          "exchange",
          "feed",
          "history",
          "inventory",
          "label",
          "lending",
          "mail",
          "merger",
          "movement",
          "office",
          "onemore",
          "ordo",
          "oversight",
          "own",
          "people",
          "photo",
          "plan",
          "planning",
          "pool",
          "problem",
          "proper",
          "remedy",
          "reservation",
          "retention",
          "review",
          "schedule",
          "sending",
          "sentonce",
          "serving",
          "setout",
          "telling",
          "times",
          "users",
          "vesting",
          "web");

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Map<String, String> SENTENCES = sentences();
  private static final Map<String, Spanish.Noun> NOUNS =
      read("nouns", new TypeReference<Map<String, Spanish.Noun>>() {});

  private Said() {}

  /** In Spanish; as it stands where it has none. */
  static String inSpanish(String english) {
    return SENTENCES.getOrDefault(english, english);
  }

  static Spanish.Noun noun(String english) {
    Spanish.Noun noun = NOUNS.get(english);
    return noun == null ? new Spanish.Noun(english, english + "s", false) : noun;
  }

  /** A sentence or a noun alone, whichever it is; as it stands where it is neither. */
  static String term(String english) {
    return SENTENCES.containsKey(english) ? inSpanish(english) : noun(english).one();
  }

  static Map<String, Spanish.Noun> nouns() {
    return Map.copyOf(NOUNS);
  }

  /** What one room has. */
  static Map<String, String> of(String room) {
    return read(room, new TypeReference<Map<String, String>>() {});
  }

  private static Map<String, String> sentences() {
    Map<String, String> all = new HashMap<>();
    ROOMS.forEach(room -> all.putAll(of(room)));
    return Map.copyOf(all);
  }

  private static <T> T read(String name, TypeReference<T> type) {
    try (InputStream file =
        Said.class.getResourceAsStream("/words/said/%s_es.json".formatted(name))) {
      return JSON.readValue(file, type);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("words/said has no JSON for " + name, e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
