package vestiary.problem;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** The OpenAPI document that the server gives of itself, as far as requests follow from it. */
final class ApiDescription {

  private static final List<String> VERBS = List.of("get", "post", "put", "delete", "patch");

  /** A stream that never ends. */
  private static final String ENDLESS = "/live";

  private final JsonNode document;

  ApiDescription(JsonNode document) {
    this.document = document;
  }

  /**
   * One way to ask the server for something.
   *
   * @param path with the names of its variable parts in braces
   * @param takes the kinds of content that its body may have; none if it has no body
   * @param body what its body looks like; missing if that is not said
   */
  record Operation(
      String verb, String path, List<Parameter> parameters, List<String> takes, JsonNode body) {

    @Override
    public String toString() {
      return verb + " " + path;
    }
  }

  /**
   * Something that the address carries.
   *
   * @param in {@code path} or {@code query}
   */
  record Parameter(String name, String in) {}

  List<Operation> operations() {
    List<Operation> found = new ArrayList<>();
    for (Map.Entry<String, JsonNode> path : document.path("paths").properties()) {
      for (Map.Entry<String, JsonNode> verb : path.getValue().properties()) {
        if (VERBS.contains(verb.getKey()) && !path.getKey().equals(ENDLESS)) {
          found.add(operation(path.getKey(), path.getValue(), verb.getKey(), verb.getValue()));
        }
      }
    }
    return found;
  }

  /** A schema, where one only points to it. */
  JsonNode resolve(JsonNode schema) {
    JsonNode pointer = schema.path("$ref");
    return pointer.isTextual() ? resolve(document.at(pointer.asText().substring(1))) : schema;
  }

  private Operation operation(String path, JsonNode shared, String verb, JsonNode said) {
    List<Parameter> parameters =
        Stream.of(shared.path("parameters"), said.path("parameters"))
            .flatMap(list -> StreamSupport.stream(list.spliterator(), false))
            .map(p -> new Parameter(p.path("name").asText(), p.path("in").asText()))
            .toList();
    JsonNode content = said.path("requestBody").path("content");
    List<String> takes = new ArrayList<>();
    content.fieldNames().forEachRemaining(takes::add);
    JsonNode body =
        takes.isEmpty() ? MissingNode.getInstance() : content.path(takes.get(0)).path("schema");
    return new Operation(verb.toUpperCase(Locale.ROOT), path, parameters, takes, body);
  }
}
