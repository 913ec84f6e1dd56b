package vestiary.web;

/** A cell of a table that is written for spreadsheets. */
public final class Cell {

  /** What makes a spreadsheet take a cell for a formula (common practice, no source). */
  private static final String FORMULA = "=+-@\t\r";

  private static final char MARK = '\'';

  private Cell() {}

  /** The text, taken for a text by a spreadsheet: an apostrophe stands before it. */
  public static String harmless(String text) {
    return isRisky(text) ? MARK + text : text;
  }

  /** What {@link #harmless} was given. */
  public static String asWritten(String cell) {
    return !cell.isEmpty() && cell.charAt(0) == MARK && isRisky(cell.substring(1))
        ? cell.substring(1)
        : cell;
  }

  /** A text that begins as a marked one does is marked too, so that it can be told from it. */
  private static boolean isRisky(String text) {
    int first = 0;
    while (first < text.length() && text.charAt(first) == MARK) {
      first++;
    }
    return first < text.length() && FORMULA.indexOf(text.charAt(first)) >= 0;
  }
}
