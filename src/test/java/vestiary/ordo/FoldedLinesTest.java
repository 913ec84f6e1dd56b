package vestiary.ordo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FoldedLinesTest {

  @ParameterizedTest
  @ValueSource(strings = {"a", "ñ", "聖", "𝄞"})
  void no_line_is_longer_than_75_octets_and_unfolding_gives_the_text_back(String character) {
    String text = "SUMMARY:" + character.repeat(200) + "\r\nEND:VEVENT\r\n";

    String folded = FoldedLines.of(text);

    folded
        .lines()
        .forEach(
            line -> assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, () -> line));
    assertEquals(text, folded.replace("\r\n ", ""));
  }

  @Test
  void a_line_of_75_octets_stays_whole() {
    String line = "x".repeat(75) + "\r\n";

    assertEquals(line, FoldedLines.of(line));
    assertEquals("x".repeat(75) + "\r\n x\r\n", FoldedLines.of("x".repeat(76)));
  }
}
