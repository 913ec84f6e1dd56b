package vestiary.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One label on its sheet, drawn in millimetres from its own upper left corner: the QR code with the
 * address, the code in letters and in bars, what it is, whose it is.
 *
 * @param code in plain letters
 * @param words what it is and whose, line by line
 * @param qr path of the QR code
 * @param bars path of the Code 128; empty where it has no room
 */
public record LabelPicture(
    String code, double x, double y, double codeX, List<Line> words, String qr, String bars) {

  public LabelPicture {
    words = List.copyOf(words);
  }

  /** Clear of the edge, where sheets shift in the printer. */
  private static final double EDGE = 2;

  private static final double LOW = 30;
  private static final double BARS = 8.5;

  /** A letter of the text is about half as wide as the text is high. */
  private static final double LETTER = 0.52;

  private static final double HIGH_TEXT = 2.7;

  /** One line of words at its height. */
  public record Line(double y, String text) {}

  /** Where it lies on its sheet, for the picture. */
  public String move() {
    return String.format(Locale.ROOT, "translate(%.4f %.4f)", x, y);
  }

  /** The label at that place of the sheet. */
  static LabelPicture of(Labelled item, LabelSheet sheet, int place) {
    double width = sheet.labelWidth();
    double height = sheet.labelHeight();
    boolean low = height < LOW;
    double square = low ? height - 2 * EDGE : height - 2 * EDGE - BARS - 1;
    double beside = EDGE + square + 1;
    double room = width - beside - EDGE;
    Optional<String> bars =
        low
            ? Bars.code128(item.code(), beside - 1, height - EDGE - BARS + 2, room + 1, BARS - 2)
            : Bars.code128(item.code(), EDGE, height - EDGE - BARS, width - 2 * EDGE, BARS);
    return new LabelPicture(
        item.code(),
        sheet.x(place),
        sheet.y(place),
        beside,
        lines(item, room, low),
        Bars.qr(item.address(), EDGE, EDGE, square),
        bars.orElse(""));
  }

  private static List<Line> lines(Labelled item, double room, boolean low) {
    List<Line> lines = new ArrayList<>();
    double y = EDGE + 8.4;
    int most = low ? 2 : 4;
    for (String text : item.words()) {
      for (String line : broken(text, (int) (room / (HIGH_TEXT * LETTER)))) {
        if (lines.size() < most) {
          lines.add(new Line(y, line));
          y += HIGH_TEXT * 1.25;
        }
      }
    }
    return lines;
  }

  /** Breaks between words; a word that is longer than a line is cut, for nothing may run over. */
  private static List<String> broken(String text, int letters) {
    List<String> lines = new ArrayList<>();
    String left = text;
    while (left.length() > letters) {
      int blank = left.lastIndexOf(' ', letters);
      int at = blank > 0 ? blank : letters;
      lines.add(left.substring(0, at));
      left = left.substring(at).strip();
    }
    if (!left.isEmpty()) {
      lines.add(left);
    }
    return lines;
  }
}
