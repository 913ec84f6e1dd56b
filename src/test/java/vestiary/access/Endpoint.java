package vestiary.access;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import java.lang.annotation.Annotation;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One way to call the server.
 *
 * @param path with the names of its variable parts in braces
 */
record Endpoint(String verb, String path, Method method, Class<?> type) {

  /** The stream of changes, which never ends. */
  private static final String ENDLESS = "/live";

  /** Every page and every address of the API, by its annotations; streams are left out. */
  static List<Endpoint> all() {
    return withStreams().stream().filter(endpoint -> !endpoint.isEndless()).toList();
  }

  /** All of them. */
  static List<Endpoint> withStreams() {
    return new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("vestiary")
            .stream()
            .filter(type -> type.isAnnotatedWith(Path.class))
            .flatMap(Endpoint::of)
            .sorted(Comparator.comparing(Endpoint::path).thenComparing(Endpoint::verb))
            .toList();
  }

  boolean isEndless() {
    return path.equals(ENDLESS);
  }

  boolean reads() {
    return verb.equals("GET");
  }

  boolean isOpenToAll() {
    return Asks.isOpenToAll(method, type);
  }

  Action action() {
    return Asks.action(method, type);
  }

  /** What its body must be, for the framework refuses everything else before the door. */
  String takes() {
    return Asks.find(Consumes.class, method, type)
        .map(c -> c.value()[0])
        .filter(one -> !one.equals(MediaType.WILDCARD))
        .orElse(MediaType.APPLICATION_JSON);
  }

  @Override
  public String toString() {
    return verb + " " + path;
  }

  private static Stream<Endpoint> of(JavaClass type) {
    Class<?> known = type.reflect();
    return type.getMethods().stream()
        .map(JavaMethod::reflect)
        .flatMap(method -> verb(method).map(v -> endpoint(v, method, known)).stream());
  }

  private static Optional<String> verb(Method method) {
    return Arrays.stream(method.getAnnotations())
        .map(Annotation::annotationType)
        .map(t -> t.getAnnotation(HttpMethod.class))
        .flatMap(Stream::ofNullable)
        .map(HttpMethod::value)
        .findFirst();
  }

  private static Endpoint endpoint(String verb, Method method, Class<?> type) {
    Path own = method.getAnnotation(Path.class);
    String path = type.getAnnotation(Path.class).value() + (own == null ? "" : "/" + own.value());
    return new Endpoint(verb, ("/" + path).replaceAll("/+", "/"), method, type);
  }
}
