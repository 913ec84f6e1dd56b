package vestiary.problem;

import static net.jqwik.api.Tuple.of;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;

/** What the server itself answered under each name, so that requests name what is there. */
final class SeenWords {

  private static final int ENOUGH = 40;

  private final Map<String, Set<String>> byName = new LinkedHashMap<>();

  /** Remembers all that an answer holds, and by what the things of a list are called. */
  void readList(String address, JsonNode answer) {
    read("", answer);
    String room = address.replaceAll("\\?.*|^/api/", "") + "/";
    for (JsonNode one : answer) {
      List.of("id", "slug", "code")
          .forEach(name -> one.path(name).asText("").lines().forEach(word -> note(room, word)));
    }
  }

  void note(String name, String word) {
    Set<String> words = byName.computeIfAbsent(name, n -> new LinkedHashSet<>());
    if (words.size() < ENOUGH) {
      words.add(word);
    }
  }

  /** Names of fields. */
  List<String> names() {
    return byName.keySet().stream().filter(name -> name.matches("\\w+")).toList();
  }

  /**
   * A word of that name, or now and then something odd.
   *
   * @param fitting how many fit for one that is odd
   */
  Arbitrary<String> any(String name, int fitting) {
    Set<String> words = byName.getOrDefault(name, Set.of());
    return words.isEmpty()
        ? OddText.any()
        : Arbitraries.frequencyOf(
            of(fitting, Arbitraries.of(List.copyOf(words))), of(1, OddText.any()));
  }

  /** A word of the first of these names under which there is any. */
  Arbitrary<String> any(String closest, String name, int fitting) {
    return any(byName.containsKey(closest) ? closest : name, fitting);
  }

  private void read(String name, JsonNode node) {
    if (node.isObject()) {
      node.properties().forEach(p -> read(p.getKey(), p.getValue()));
    } else if (node.isArray()) {
      node.forEach(n -> read(name, n));
    } else if (!node.isNull() && !name.isEmpty()) {
      note(name, node.asText());
    }
  }
}
