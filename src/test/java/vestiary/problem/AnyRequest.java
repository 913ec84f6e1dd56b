package vestiary.problem;

import static net.jqwik.api.Arbitraries.frequencyOf;
import static net.jqwik.api.Tuple.of;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.UncheckedIOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import vestiary.problem.ApiDescription.Operation;
import vestiary.problem.ApiDescription.Parameter;

/**
 * A request that somebody could send.
 *
 * @param address as it stands in the request's first line, query included
 */
record AnyRequest(
    Operation operation, String address, String accepts, String contentType, String body) {

  /** Whatever stands in a text arrives as it stands, halves of characters too. */
  private static final ObjectMapper JSON =
      JsonMapper.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();

  private static final String JSON_TYPE = "application/json";
  private static final String FORM = "application/x-www-form-urlencoded";
  private static final String FORM_WITH_FILES = "multipart/form-data";
  private static final int MOST_FIELDS = 12;

  /** How many words of an address are there for one that is odd. */
  private static final int FITTING = 4;

  @Override
  public String toString() {
    String shown = body.length() > 300 ? body.substring(0, 300) + "…" : body;
    return "%s %s [%s] %s".formatted(operation.verb(), address, contentType, shown);
  }

  /** Requests of one kind. */
  static Arbitrary<AnyRequest> to(Operation operation, AnyJson json, SeenWords seen) {
    return Combinators.combine(address(operation, seen), wanted(), content(operation, json, seen))
        .as((address, accepts, content) -> request(operation, address, accepts, content));
  }

  private record Content(String type, String body) {}

  private static AnyRequest request(
      Operation operation, String address, String accepts, Content content) {
    return new AnyRequest(operation, address, accepts, content.type(), content.body());
  }

  private static Arbitrary<String> address(Operation operation, SeenWords seen) {
    List<Arbitrary<String>> parts = new ArrayList<>();
    String before = "";
    for (String part : operation.path().substring(1).split("/")) {
      parts.add(part.contains("{") ? inPlaceOf(part, before + "/", seen) : Arbitraries.just(part));
      before = part;
    }
    Arbitrary<String> path = Combinators.combine(parts).as(all -> "/" + String.join("/", all));
    return Combinators.combine(path.flatMap(AnyRequest::tricked), query(operation, seen))
        .as(String::concat);
  }

  private static Arbitrary<String> inPlaceOf(String part, String room, SeenWords seen) {
    String name = part.replaceAll(".*\\{([^}:]+).*", "$1");
    return seen.any(room, name, FITTING)
        .map(word -> part.replaceAll("\\{[^}]+}", Matcher.quoteReplacement(encoded(word))));
  }

  /** Rarely, what looks like another way to the same place. */
  private static Arbitrary<String> tricked(String path) {
    return frequencyOf(
        of(40, Arbitraries.just(path)),
        of(
            1,
            Arbitraries.of(
                "/" + path,
                path + "/",
                path + "//",
                path + "/..",
                path + "/%2e%2e/",
                path + "/..%2f..%2fapplication.properties",
                path + "%00",
                path + ";a=b",
                path + "%0d%0aX-Header:%20x",
                "/." + path,
                path.replaceFirst("/", "/%2e/"),
                path.toUpperCase(Locale.ROOT))));
  }

  private static Arbitrary<String> query(Operation operation, SeenWords seen) {
    List<Arbitrary<String>> parts =
        operation.parameters().stream()
            .filter(p -> p.in().equals("query"))
            .map(p -> given(p, seen))
            .toList();
    return parts.isEmpty()
        ? frequencyOf(of(9, Arbitraries.just("")), of(1, Arbitraries.just("?from=x&&=&a")))
        : Combinators.combine(parts)
            .as(
                all ->
                    "?" + all.stream().filter(p -> !p.isEmpty()).collect(Collectors.joining("&")));
  }

  private static Arbitrary<String> given(Parameter parameter, SeenWords seen) {
    Arbitrary<String> one =
        seen.any("?" + parameter.name(), parameter.name(), FITTING)
            .map(word -> parameter.name() + "=" + encoded(word));
    return frequencyOf(
        of(12, one),
        of(2, Arbitraries.just("")),
        of(1, Combinators.combine(one, one).as((a, b) -> a + "&" + b)));
  }

  private static Arbitrary<String> wanted() {
    return frequencyOf(
        of(20, Arbitraries.just("*/*")),
        of(1, Arbitraries.just(JSON_TYPE)),
        of(4, Arbitraries.just("text/html,*/*;q=0.8")),
        of(1, Arbitraries.of("image/png", "text/html;q=2", "x", "application/json;q=0")));
  }

  private static Arbitrary<Content> content(Operation operation, AnyJson json, SeenWords seen) {
    if (operation.takes().isEmpty()) {
      return frequencyOf(
          of(9, Arbitraries.just(new Content("", ""))),
          of(1, Arbitraries.of(new Content(JSON_TYPE, "{"), new Content("x", "y"))));
    }
    String type = operation.takes().get(0);
    Arbitrary<String> usual = type.equals(JSON_TYPE) ? json(operation, json) : form(seen);
    return frequencyOf(
        of(20, usual.map(body -> new Content(whole(type), body))),
        of(2, usual.map(body -> new Content(JSON_TYPE, body))),
        of(1, usual.map(body -> new Content(FORM, body))),
        of(1, usual.map(body -> new Content(FORM_WITH_FILES, body))),
        of(1, usual.map(body -> new Content("text/plain;charset=utf-99", body))));
  }

  private static String whole(String type) {
    return type.equals(FORM_WITH_FILES) ? type + ";boundary=x" : type;
  }

  private static Arbitrary<String> json(Operation operation, AnyJson json) {
    Arbitrary<String> text = json.of(operation.body(), "").map(AnyRequest::written);
    return frequencyOf(
        of(20, text),
        of(
            2,
            text.flatMap(
                t -> Arbitraries.integers().between(0, t.length()).map(n -> t.substring(0, n)))),
        of(1, text.map(t -> t + t)),
        of(1, OddText.any()),
        of(
            1,
            Arbitraries.of(
                "", "null", "[".repeat(100_000), "{\"a\":".repeat(20_000), "1e999999999")));
  }

  private static Arbitrary<String> form(SeenWords seen) {
    return Arbitraries.of(seen.names())
        .flatMap(name -> seen.any(name, FITTING).map(word -> encoded(name) + "=" + encoded(word)))
        .list()
        .ofMaxSize(MOST_FIELDS)
        .map(fields -> String.join("&", fields));
  }

  private static String written(JsonNode body) {
    try {
      return JSON.writeValueAsString(body);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Dots alone would be taken as a way up by the client already. */
  private static String encoded(String word) {
    String encoded = URLEncoder.encode(word, StandardCharsets.UTF_8).replace("+", "%20");
    return Stream.of(".", "..").anyMatch(encoded::equals) ? encoded.replace(".", "%2E") : encoded;
  }
}
