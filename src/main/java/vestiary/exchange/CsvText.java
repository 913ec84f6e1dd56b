package vestiary.exchange;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;

/**
 * The text of a CSV file, taken from its bytes: UTF-8 and nothing else, of bearable length, without
 * byte order mark.
 *
 * @param text all lines, the header first
 * @param separator comma, semicolon or tab, whichever the header line has most of
 */
record CsvText(String text, char separator) {

  /** Most lines after the header; a cluster's whole inventory has a few thousand. */
  static final int MOST_LINES = 20_000;

  private static final List<Character> SEPARATORS = List.of(',', ';', '\t');

  static CsvText parse(byte[] file) throws BadFile {
    refusePacked(file);
    refuseTooManyLines(file);
    String decoded = decode(file);
    String text = decoded.startsWith("\uFEFF") ? decoded.substring(1) : decoded;
    if (text.isBlank()) {
      throw new BadFile(1, "The file is empty. Its first line must name the columns.");
    }
    return new CsvText(text, separatorOf(text.lines().findFirst().orElse("")));
  }

  /** By the first bytes of ZIP (APPNOTE 4.3.7), as spreadsheets use it, and of gzip (RFC 1952). */
  private static void refusePacked(byte[] file) throws BadFile {
    boolean isZip = file.length > 1 && file[0] == 'P' && file[1] == 'K';
    boolean isGzip = file.length > 1 && file[0] == (byte) 0x1F && file[1] == (byte) 0x8B;
    boolean isText = isZip && file.length > 2 && file[2] >= ' ';
    if (isGzip || isZip && !isText) {
      throw new BadFile(
          1,
          "The file is packed, as the files of a spreadsheet are, and no list. Save it from the spreadsheet as CSV UTF-8.");
    }
  }

  private static void refuseTooManyLines(byte[] file) throws BadFile {
    int ends = 0;
    for (int i = 0; i < file.length - 1; i++) {
      boolean isEnd = file[i] == '\n' || file[i] == '\r' && file[i + 1] != '\n';
      if (isEnd && ++ends > MOST_LINES) {
        throw new BadFile(
            ends + 1,
            "The file has more than %,d lines after its header. Divide it into smaller files."
                .formatted(MOST_LINES));
      }
    }
  }

  private static String decode(byte[] file) throws BadFile {
    ByteBuffer bytes = ByteBuffer.wrap(file);
    CharBuffer text = CharBuffer.allocate(file.length);
    CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(bytes, text, true);
    text.flip();
    if (result.isError()) {
      throw new BadFile(
          (int) text.chars().filter(c -> c == '\n').count() + 1,
          "The file is not UTF-8 from this line on. Save it from the spreadsheet as CSV UTF-8.");
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
