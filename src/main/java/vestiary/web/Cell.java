package vestiary.web;

/** A cell of a table that is written for spreadsheets. */
public final class Cell {

  /** What makes a spreadsheet take a cell for a formula (common practice, no source). */
  private static final String FORMULA = "=+-@\t\r";

  private Cell() {}

  /** The text, taken for a text by a spreadsheet. */
  public static String harmless(String text) {
    return !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
