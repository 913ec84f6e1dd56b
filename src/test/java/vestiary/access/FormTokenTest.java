package vestiary.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A form without the session's token would be refused to whoever has signed in. */
class FormTokenTest {

  private static final Path TEMPLATES = Path.of("src/main/resources/templates");
  private static final Pattern FORM = Pattern.compile("(?s)<form\\b[^>]*method=\"post\".*?</form>");

  @Test
  void every_form_that_changes_something_carries_it() throws IOException {
    List<String> without = new ArrayList<>();
    int found = 0;
    try (Stream<Path> files = Files.walk(TEMPLATES)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".html")).toList()) {
        Matcher form = FORM.matcher(read(file));
        while (form.find()) {
          found++;
          if (!form.group().contains("{#token /}")) {
            without.add(file + ": " + form.group().lines().findFirst().orElse(""));
          }
        }
      }
    }

    assertEquals(List.of(), without);
    assertTrue(found > 20, "found only " + found);
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
