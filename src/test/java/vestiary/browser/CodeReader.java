package vestiary.browser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * Reads codes in a picture by zbarimg (Debian package zbar-tools), which shares nothing with what
 * draws them. Where it is not installed the test says so and is left out, but fails where {@code
 * CI} is true.
 */
final class CodeReader {

  private static final String NONE =
      "zbarimg was not found, so printed labels were not read back. Install zbar-tools.";

  private CodeReader() {}

  /** For example "QR-Code:https://vestments.example/s/HT-W1" and "CODE-128:HT-W1", in order. */
  static List<String> read(byte[] png) throws IOException, InterruptedException {
    Path picture = Files.createTempFile("labels", ".png");
    try {
      Files.write(picture, png);
      Process reader = start(picture);
      String found = new String(reader.getInputStream().readAllBytes());
      Assertions.assertTrue(reader.waitFor(30, TimeUnit.SECONDS), "zbarimg does not end");
      return found.lines().sorted().toList();
    } finally {
      Files.delete(picture);
    }
  }

  private static Process start(Path picture) {
    try {
      return new ProcessBuilder("zbarimg", "-q", picture.toString())
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException notInstalled) {
      System.out.println(NONE);
      Assertions.assertNotEquals("true", System.getenv("CI"), NONE);
      return Assumptions.abort(NONE);
    }
  }
}
