package vestiary.label;

import com.google.zxing.WriterException;
import com.google.zxing.oned.Code128Writer;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.Locale;
import java.util.Optional;

/** Draws codes as SVG paths in millimetres. */
final class Bars {

  /** Clear modules on every side; ISO/IEC 18004, 9.1. */
  private static final int QUIET_QR = 4;

  /** Clear modules before and after; ISO/IEC 15417, 4.6. */
  private static final int QUIET_128 = 10;

  /** 7.5 thousandths of an inch: finer bars run together on office printers (from memory). */
  private static final double FINEST = 0.19;

  private Bars() {}

  /**
   * A QR code that still reads when a seventh of it is lost.
   *
   * @param side of the square, its clear margin included
   */
  static String qr(String text, double x, double y, double side) {
    ByteMatrix matrix = encoded(text);
    double module = side / (matrix.getWidth() + 2.0 * QUIET_QR);
    StringBuilder path = new StringBuilder();
    for (int row = 0; row < matrix.getHeight(); row++) {
      for (int column = 0; column < matrix.getWidth(); column++) {
        if (matrix.get(column, row) == 1) {
          int first = column;
          while (column + 1 < matrix.getWidth() && matrix.get(column + 1, row) == 1) {
            column++;
          }
          box(
              path,
              x + (first + QUIET_QR) * module,
              y + (row + QUIET_QR) * module,
              (column - first + 1) * module,
              module);
        }
      }
    }
    return path.toString();
  }

  private static ByteMatrix encoded(String text) {
    try {
      return Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
    } catch (WriterException tooLong) {
      throw new IllegalArgumentException("No QR code holds the address " + text, tooLong);
    }
  }

  /**
   * Code 128 over the whole width, its clear margins included.
   *
   * @return empty where the code is too long for bars that a printer can part
   */
  static Optional<String> code128(String code, double x, double y, double width, double height) {
    boolean[] bars = new Code128Writer().encode(code);
    double module = width / (bars.length + 2.0 * QUIET_128);
    if (module < FINEST) {
      return Optional.empty();
    }
    StringBuilder path = new StringBuilder();
    for (int at = 0; at < bars.length; at++) {
      if (bars[at]) {
        int first = at;
        while (at + 1 < bars.length && bars[at + 1]) {
          at++;
        }
        box(path, x + (first + QUIET_128) * module, y, (at - first + 1) * module, height);
      }
    }
    return Optional.of(path.toString());
  }

  private static void box(StringBuilder path, double x, double y, double width, double height) {
    path.append(
        String.format(Locale.ROOT, "M%.3f %.3fh%.3fv%.3fh-%.3fz", x, y, width, height, width));
  }
}
