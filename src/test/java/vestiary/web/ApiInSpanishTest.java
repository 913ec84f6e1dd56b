package vestiary.web;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Scenario;

/** Programs are answered in the language that they ask for, and by the same ids in each. */
@QuarkusTest
class ApiInSpanishTest {

  private static final String SPAN = "from=2026-12-05&to=2026-12-11";

  /** What no Spanish sentence has. */
  private static final Pattern ENGLISH =
      Pattern.compile("\\b(the|and|is|are|not|with|which|whose|white|violet|Sunday|Mass|for)\\b");

  /** Names of churches of the invented cluster, and why pieces are away, as people typed it. */
  private static final Pattern TYPED =
      Pattern.compile(
          "Our Lady of the Rosary|Saints Peter and Paul|lining is being mended|at the cleaner");

  @Inject Scenario scenario;

  private List<String> addresses;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
    String mass = Asking.mass("sa", "2026-12-08T18:30").get("id").toString();
    addresses =
        List.of(
            "/api/calendars",
            "/api/calendars/us/days?" + SPAN,
            "/api/churches/sa/days?from=2026-12-05&to=2027-04-10",
            "/api/rulings?church=sa&start=2026-12-08T18:30",
            "/api/rulings?church=sa&start=2027-03-25T18:30",
            "/api/masses/" + mass,
            "/api/masses/%s/needs".formatted(mass),
            "/api/masses/%s/set-out".formatted(mass),
            "/api/celebrants/masses/" + mass,
            "/api/clashes?" + SPAN,
            "/api/patterns");
  }

  @Test
  void no_sentence_is_left_in_english() throws Exception {
    List<String> english = new ArrayList<>();
    for (String address : addresses) {
      for (Map.Entry<String, String> text : texts(read(address, "es"), "").entrySet()) {
        String said = TYPED.matcher(text.getValue()).replaceAll("");
        if (!isTyped(text.getKey()) && said.contains(" ") && ENGLISH.matcher(said).find()) {
          english.add(address + text.getKey() + ": " + text.getValue());
        }
      }
    }
    assertEquals(List.of(), english);
  }

  @Test
  void ids_and_numbers_are_the_same_in_both() throws Exception {
    int different = 0;
    for (String address : addresses) {
      Map<String, String> english = texts(read(address, "en"), "");
      Map<String, String> spanish = texts(read(address, "es"), "");
      assertEquals(english.keySet(), spanish.keySet(), address);
      for (String at : english.keySet()) {
        if (!english.get(at).equals(spanish.get(at))) {
          different++;
          assertTrue(isSaid(at), address + at + ": " + spanish.get(at));
        }
      }
    }
    assertTrue(different > 100, "only %d were said in Spanish".formatted(different));
  }

  @Test
  void days_are_told_in_the_language_that_their_address_names() throws Exception {
    JsonNode day = read("/api/churches/sa/days?from=2026-12-08&to=2026-12-08&language=es", "en");

    assertFalse(ENGLISH.matcher(day.get(0).get("reason").asText()).find(), day.toString());
    assertTrue(day.get(0).get("celebrations").get(0).get("name").asText().contains("María"));
  }

  /** Notes stand as people typed them, and who published a day as it was published. */
  private static boolean isTyped(String at) {
    return at.matches(".*/(source|note)$");
  }

  private static boolean isSaid(String at) {
    return at.matches(
        ".*/(name|reason|sentence|celebrationName|words|why|who|costs|how|where|state)$"
            + "|.*/(effects|waysOut|also|proof)/.*");
  }

  private static JsonNode read(String address, String language) throws Exception {
    String body =
        given()
            .header("Accept-Language", language)
            .get(address)
            .then()
            .statusCode(200)
            .extract()
            .asString();
    return new ObjectMapper().readTree(body);
  }

  private static Map<String, String> texts(JsonNode node, String at) {
    Map<String, String> all = new LinkedHashMap<>();
    if (node.isObject()) {
      node.fields()
          .forEachRemaining(
              field -> all.putAll(texts(field.getValue(), at + "/" + field.getKey())));
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        all.putAll(texts(node.get(i), at + "/" + i));
      }
    } else {
      all.put(at, node.asText());
    }
    return all;
  }
}
