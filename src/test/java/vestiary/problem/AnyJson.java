package vestiary.problem;

import static net.jqwik.api.Arbitraries.frequencyOf;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;

/**
 * JSON by a schema: mostly what fits it, at times what lies at its border, at times what does not.
 */
final class AnyJson {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final int DEEPEST = 4;

  /** A field that is left out. */
  private static final Map.Entry<String, JsonNode> ABSENT = Map.entry("", NODES.nullNode());

  private final ApiDescription api;
  private final SeenWords seen;
  private final int fitting;

  /**
   * JSON by the schemas of a description.
   *
   * @param fitting how many values fit for one that does not
   */
  AnyJson(ApiDescription api, SeenWords seen, int fitting) {
    this.api = api;
    this.seen = seen;
    this.fitting = fitting;
  }

  /** Any value of a field; the values that the server itself gives for that name come first. */
  Arbitrary<JsonNode> of(JsonNode schema, String name) {
    return of(schema, name, 0);
  }

  private Arbitrary<JsonNode> of(JsonNode pointer, String name, int depth) {
    JsonNode schema = api.resolve(pointer);
    return frequencyOf(
        Tuple.of(2 * fitting, fitting(schema, name, depth)),
        Tuple.of(1, ofType(type(schema))),
        Tuple.of(1, wrong()));
  }

  private Arbitrary<JsonNode> fitting(JsonNode schema, String name, int depth) {
    if (schema.path("enum").size() > 0) {
      return Arbitraries.of(
          StreamSupport.stream(schema.path("enum").spliterator(), false).toList());
    }
    return switch (type(schema)) {
      case "object" -> object(schema, depth);
      case "array" -> array(schema, name, depth);
      case "string" -> seen.any(name, fitting).map(NODES::textNode).map(JsonNode.class::cast);
      default -> ofType(type(schema));
    };
  }

  private Arbitrary<JsonNode> object(JsonNode schema, int depth) {
    List<Arbitrary<Map.Entry<String, JsonNode>>> fields = new ArrayList<>();
    if (depth < DEEPEST) {
      schema
          .path("properties")
          .properties()
          .forEach(p -> fields.add(field(p.getKey(), of(p.getValue(), p.getKey(), depth + 1))));
    }
    fields.add(frequencyOf(Tuple.of(9, Arbitraries.just(ABSENT)), Tuple.of(1, stray())));
    return Combinators.combine(fields).as(AnyJson::objectOf);
  }

  /** A name that no schema has. */
  private static Arbitrary<Map.Entry<String, JsonNode>> stray() {
    return Combinators.combine(Arbitraries.strings().ascii().ofMaxLength(5), wrong())
        .as((name, value) -> Map.entry(name, value));
  }

  /** A field that is left out one time in five. */
  private static Arbitrary<Map.Entry<String, JsonNode>> field(
      String name, Arbitrary<JsonNode> value) {
    return frequencyOf(
        Tuple.of(4, value.map(v -> Map.entry(name, v))), Tuple.of(1, Arbitraries.just(ABSENT)));
  }

  private static JsonNode objectOf(List<Map.Entry<String, JsonNode>> fields) {
    ObjectNode object = NODES.objectNode();
    fields.stream()
        .filter(f -> !f.getKey().isEmpty())
        .forEach(f -> object.set(f.getKey(), f.getValue()));
    return object;
  }

  private Arbitrary<JsonNode> array(JsonNode schema, String name, int depth) {
    return of(schema.path("items"), name, depth + 1)
        .list()
        .ofMaxSize(3)
        .map(
            items -> {
              ArrayNode array = NODES.arrayNode();
              items.forEach(array::add);
              return array;
            });
  }

  private static Arbitrary<JsonNode> ofType(String type) {
    return switch (type) {
      case "integer" -> Arbitraries.of(wholes());
      case "number" -> Arbitraries.of(numbers());
      case "boolean" -> Arbitraries.of(NODES.booleanNode(true), NODES.booleanNode(false));
      case "object" -> Arbitraries.just(NODES.objectNode());
      case "array" -> Arbitraries.just(NODES.arrayNode());
      default -> OddText.any().map(NODES::textNode);
    };
  }

  private static Arbitrary<JsonNode> wrong() {
    return Arbitraries.of(
            "integer", "number", "boolean", "object", "array", "string", "null", "deep")
        .flatMap(
            type ->
                switch (type) {
                  case "null" -> Arbitraries.just(NODES.nullNode());
                  case "deep" -> Arbitraries.just(deep(200));
                  default -> ofType(type);
                });
  }

  private static JsonNode deep(int levels) {
    ArrayNode deepest = NODES.arrayNode();
    for (int i = 0; i < levels; i++) {
      deepest = NODES.arrayNode().add(deepest);
    }
    return deepest;
  }

  private static List<JsonNode> wholes() {
    return List.of(
        NODES.numberNode(0),
        NODES.numberNode(1),
        NODES.numberNode(2),
        NODES.numberNode(60),
        NODES.numberNode(-1),
        NODES.numberNode(Integer.MAX_VALUE),
        NODES.numberNode(Integer.MIN_VALUE),
        NODES.numberNode(Integer.MAX_VALUE + 1L),
        NODES.numberNode(Long.MAX_VALUE),
        NODES.numberNode(BigInteger.TEN.pow(60)));
  }

  private static List<JsonNode> numbers() {
    return List.of(
        NODES.numberNode(0.0),
        NODES.numberNode(-0.5),
        NODES.numberNode(43.0731),
        NODES.numberNode(90),
        NODES.numberNode(-180.000001),
        NODES.numberNode(Double.MAX_VALUE),
        NODES.numberNode(Double.MIN_VALUE),
        NODES.numberNode(new BigDecimal("1e400")),
        NODES.numberNode(new BigDecimal("-1e-400")));
  }

  private static String type(JsonNode schema) {
    JsonNode type = schema.path("type");
    if (type.isArray()) {
      return StreamSupport.stream(type.spliterator(), false)
          .map(JsonNode::asText)
          .filter(t -> !t.equals("null"))
          .findFirst()
          .orElse("string");
    }
    return type.isTextual() ? type.asText() : schema.has("properties") ? "object" : "string";
  }
}
