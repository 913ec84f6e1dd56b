package vestiary.ordo;

import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;

/**
 * Lines folded so that none is longer than 75 octets, its end not counted. The writer of the
 * calendar's library counts characters, of which one may be four octets. Source: RFC 5545, 3.1.
 */
public final class FoldedLines {

  private static final int LONGEST_OCTETS = 75;
  private static final String END = "\r\n";
  private static final String FOLD = END + " ";

  private FoldedLines() {}

  /** The lines of the text, each ended by CR LF; no character is cut in two. */
  public static String of(String text) {
    return text.lines().map(FoldedLines::folded).collect(Collectors.joining(END, "", END));
  }

  private static String folded(String line) {
    StringBuilder folded = new StringBuilder();
    int octets = 0;
    for (int character : line.codePoints().toArray()) {
      String next = Character.toString(character);
      int length = next.getBytes(StandardCharsets.UTF_8).length;
      if (octets + length > LONGEST_OCTETS) {
        folded.append(FOLD);
        octets = 1;
      }
      folded.append(next);
      octets += length;
    }
    return folded.toString();
  }
}
