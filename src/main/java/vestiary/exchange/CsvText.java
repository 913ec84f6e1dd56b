package vestiary.exchange;

import static vestiary.web.Speech.say;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;

/**
 * The text of a CSV file, taken from its bytes: of bearable length, without byte order mark.
 *
 * @param text all lines, the header first
 * @param separator comma, semicolon or tab, whichever the header line has most of
 * @param charset how its letters were read
 */
record CsvText(String text, char separator, Charset charset) {

  /** Most lines after the header; a cluster's whole inventory has a few thousand. */
  static final int MOST_LINES = 20_000;

  private static final List<Character> SEPARATORS = List.of(',', ';', '\t');

  /** As old spreadsheets write, which have no UTF-8. */
  private static final Charset WINDOWS = Charset.forName("windows-1252");

  /** Reads UTF-8 and nothing else. */
  static CsvText parse(byte[] file) throws BadFile {
    FirstBytes.refuseForeign(file);
    refuseTooManyLines(file);
    return of(decode(file), StandardCharsets.UTF_8);
  }

  /**
   * Reads whatever a spreadsheet may have written: UTF-8, UTF-16 with its mark, or Windows-1252
   * where it is neither. Whether that was right, somebody must see by the letters.
   */
  static CsvText parseAny(byte[] file) throws BadFile {
    if (isUtf16(file)) {
      refuseTooManyLines(file);
      return of(new String(file, StandardCharsets.UTF_16), StandardCharsets.UTF_16);
    }
    FirstBytes.refuseForeign(file);
    refuseBinary(file);
    try {
      return parse(file);
    } catch (NotUtf8 other) {
      return of(new String(file, WINDOWS), WINDOWS);
    }
  }

  private static CsvText of(String decoded, Charset charset) throws BadFile {
    String text = decoded.startsWith("\uFEFF") ? decoded.substring(1) : decoded;
    if (text.isBlank()) {
      throw new BadFile(1, say("The file is empty. Its first line must name the columns."));
    }
    return new CsvText(text, separatorOf(text.lines().findFirst().orElse("")), charset);
  }

  private static boolean isUtf16(byte[] file) {
    return file.length > 1
        && (file[0] == (byte) 0xFE && file[1] == (byte) 0xFF
            || file[0] == (byte) 0xFF && file[1] == (byte) 0xFE);
  }

  /** Each of these bytes is the same sign in UTF-8 and Windows-1252. */
  private static void refuseBinary(byte[] file) throws BadFile {
    for (byte one : file) {
      if (one >= 0 && one < ' ' && "\t\r\n\f".indexOf(one) < 0) {
        throw new BadFile(
            1,
            say("The file is no text, and so no list. Save it from the spreadsheet as CSV UTF-8."));
      }
    }
  }

  /** That the file is written in something else. */
  private static final class NotUtf8 extends BadFile {
    private static final long serialVersionUID = 1L;

    NotUtf8(int line) {
      super(
          line,
          say(
              "The file is not UTF-8 from this line on. Save it from the spreadsheet as CSV UTF-8."));
    }
  }

  private static void refuseTooManyLines(byte[] file) throws BadFile {
    int ends = 0;
    for (int i = 0; i < file.length - 1; i++) {
      boolean isEnd = file[i] == '\n' || file[i] == '\r' && file[i + 1] != '\n';
      if (isEnd && ++ends > MOST_LINES) {
        throw new BadFile(
            ends + 1,
            say(
                "The file has more than %,d lines after its header. Divide it into smaller files.",
                MOST_LINES));
      }
    }
  }

  private static String decode(byte[] file) throws BadFile {
    ByteBuffer bytes = ByteBuffer.wrap(file);
    CharBuffer text = CharBuffer.allocate(file.length);
    CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(bytes, text, true);
    text.flip();
    if (result.isError()) {
      throw new NotUtf8((int) text.chars().filter(c -> c == '\n').count() + 1);
    }
    return text.toString();
  }

  private static char separatorOf(String header) {
    return SEPARATORS.stream()
        .max(Comparator.comparingLong(s -> header.chars().filter(c -> c == s).count()))
        .filter(s -> header.indexOf(s) >= 0)
        .orElse(',');
  }
}
