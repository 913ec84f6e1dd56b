package vestiary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The list of parts that lies beside the packaged program. Source: CycloneDX 1.6. */
class ListOfPartsTest {

  private static final Path PROGRAM = Path.of("target", "quarkus-app");

  @Test
  void every_library_of_the_package_is_in_the_list_with_its_version() throws IOException {
    JsonNode list =
        new ObjectMapper().readTree(PROGRAM.resolve("quarkus-run-cyclonedx.json").toFile());
    assertEquals("CycloneDX", list.path("bomFormat").asText());
    Set<String> parts = new HashSet<>();
    for (JsonNode part : list.path("components")) {
      parts.add(part.path("name").asText() + "-" + part.path("version").asText());
    }

    List<String> missing =
        libraries().stream().filter(file -> parts.stream().noneMatch(file::contains)).toList();

    assertEquals(List.of(), missing);
    assertTrue(libraries().size() > 100, "found only " + libraries().size());
  }

  private static List<String> libraries() throws IOException {
    try (Stream<Path> files = Files.list(PROGRAM.resolve(Path.of("lib", "main")))) {
      return files.map(file -> file.getFileName().toString()).toList();
    }
  }
}
