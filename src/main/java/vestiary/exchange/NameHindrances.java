package vestiary.exchange;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import vestiary.cluster.ReadCluster;
import vestiary.web.Speech;

/** Says what stands against undoing an import. */
@ApplicationScoped
class NameHindrances {

  private static final int MOST = 10;

  /** What a row is called that has no name of its own. */
  private static final Map<String, String> NOUNS =
      Map.ofEntries(
          Map.entry("cluster", word("the settings of the cluster")),
          Map.entry("journey", word("a journey")),
          Map.entry("pattern", word("a Mass time")),
          Map.entry("occupation", word("what is noted of a vestment")),
          Map.entry("mass_origin", word("a Mass of a calendar that was brought in")),
          Map.entry("sending", word("what is noted as out")),
          Map.entry("sent_piece", word("what is noted as out")),
          Map.entry("stocktake", word("an inventory")),
          Map.entry("stocktake_line", word("an inventory")),
          Map.entry("absence", word("an absence")),
          Map.entry("ministry", word("what is noted of a person")),
          Map.entry("person_church", word("what is noted of a person")),
          Map.entry("child", word("what is noted of a person")),
          Map.entry("person_mail", word("the mail address of a person")),
          Map.entry("photo", word("a photograph")),
          Map.entry("piece_value", word("what a vestment is worth")),
          Map.entry("printed_label", word("a printed label")),
          Map.entry("reservation", word("vestments that are set aside")),
          Map.entry("user_church", word("a user of a church")),
          Map.entry("serving", word("who serves at a Mass")),
          Map.entry("worn", word("what was worn at a Mass")));

  private static final String UNNAMED = word("something that needs what it entered");

  private final ReadCluster cluster;
  private final ObjectMapper json;

  NameHindrances(ReadCluster cluster, ObjectMapper json) {
    this.cluster = cluster;
    this.json = json;
  }

  /**
   * One sentence, or empty if nothing stands against it.
   *
   * @param hindrances table and row of each, as JSON
   */
  Optional<String> sentence(String hindrances) {
    JsonNode found = read(hindrances);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    List<String> names =
        new ArrayList<>(
            StreamSupport.stream(found.spliterator(), false)
                .map(one -> name(one.get(0).asText(), one.get(1)))
                .distinct()
                .limit(MOST + 1L)
                .toList());
    if (names.size() > MOST) {
      names.set(MOST, say("others"));
    }
    return Optional.of(
        say(
            "It cannot be undone, since this was changed or entered after it: %s. Nothing was changed.",
            Speech.list(names)));
  }

  private String name(String kind, JsonNode line) {
    return switch (kind) {
      case "mass" -> mass(line);
      case "piece", "vestment_set" -> say("vestment %s", line.path("code").asText());
      case "church", "parish", "person", "suit", "proper" -> line.path("name").asText();
      default -> say(NOUNS.getOrDefault(kind, UNNAMED));
    };
  }

  private String mass(JsonNode line) {
    ZonedDateTime start =
        OffsetDateTime.parse(line.path("starts").asText())
            .atZoneSameInstant(cluster.cluster().zone());
    String church =
        cluster.churches().stream()
            .filter(one -> one.id().value().toString().equals(line.path("church_id").asText()))
            .map(one -> " " + say("in %s", one.name()))
            .collect(Collectors.joining());
    return say(
        "the Mass on %s at %s%s",
        Speech.dateAndYear(start.toLocalDate()), Speech.clock(start), church);
  }

  private JsonNode read(String line) {
    try {
      return json.readTree(line);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the database wrote no JSON", e);
    }
  }
}
