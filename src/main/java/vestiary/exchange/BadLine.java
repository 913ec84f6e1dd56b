package vestiary.exchange;

import static vestiary.web.Speech.say;

/**
 * Why a line of a file cannot be brought in.
 *
 * @param line physical line in the file, counted from 1, the header included; of a record over
 *     several lines the first
 * @param column name of the column, or empty where the whole line or file is meant
 * @param reason a sentence that repeats what stood there and says what may stand there
 */
public record BadLine(int line, String column, String reason) {

  private static final int LONGEST_SHOWN = 80;

  /**
   * A bad cell.
   *
   * @param text what stood there, repeated up to a bearable length; may be empty
   * @param wanted a sentence on what may stand there
   */
  static BadLine of(int line, String column, String text, String wanted) {
    String shown = text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "…" : text;
    return new BadLine(
        line, column, text.isEmpty() ? wanted : say("\"%s\" cannot stand here. %s", shown, wanted));
  }
}
