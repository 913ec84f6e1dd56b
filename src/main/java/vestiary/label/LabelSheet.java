package vestiary.label;

import java.util.Optional;
import java.util.stream.Stream;
import vestiary.web.Speech;

/**
 * Sheets of labels that shops sell, in millimetres from the upper left corner of the paper (ISO 216
 * for A4, 210 × 297; ANSI Y14.1 for Letter, 8½ × 11 in).
 */
enum LabelSheet {
  /** Source: printreadykit.pages.dev, label layout "Address labels (A4, 21 per sheet)". */
  A4_21(
      "a4-21",
      Speech.word("A4, 21 labels of 63.5 × 38.1 mm"),
      "a4",
      210,
      297,
      3,
      7,
      63.5,
      38.1,
      7.2,
      15.15,
      66,
      38.1),

  /** Fills the sheet; measures from memory. */
  A4_21_WHOLE(
      "a4-21-whole",
      Speech.word("A4, 21 labels of 70 × 42.3 mm, without margins"),
      "a4",
      210,
      297,
      3,
      7,
      70,
      42.3,
      0,
      0.45,
      70,
      42.3),

  /**
   * Source: table of label sheet dimensions at gist.github.com/armadsen/5084458, the sheet of 3
   * times 10: margins 0.5 and 0.188 in, gutter 0.125 in; the label is then 2⅝ × 1 in.
   */
  LETTER_30(
      "letter-30",
      Speech.word("Letter, 30 labels of 2⅝ × 1 in"),
      "letter",
      215.9,
      279.4,
      3,
      10,
      66.675,
      25.4,
      4.7625,
      12.7,
      69.85,
      25.4);

  private final String id;
  private final String words;
  private final String paper;
  private final double width;
  private final double height;
  private final int columns;
  private final int rows;
  private final double labelWidth;
  private final double labelHeight;
  private final double left;
  private final double top;
  private final double across;
  private final double down;

  LabelSheet(
      String id,
      String words,
      String paper,
      double width,
      double height,
      int columns,
      int rows,
      double labelWidth,
      double labelHeight,
      double left,
      double top,
      double across,
      double down) {
    this.id = id;
    this.words = words;
    this.paper = paper;
    this.width = width;
    this.height = height;
    this.columns = columns;
    this.rows = rows;
    this.labelWidth = labelWidth;
    this.labelHeight = labelHeight;
    this.left = left;
    this.top = top;
    this.across = across;
    this.down = down;
  }

  static Optional<LabelSheet> find(String id) {
    return Stream.of(values()).filter(sheet -> sheet.id.equals(id)).findFirst();
  }

  String id() {
    return id;
  }

  String words() {
    return Speech.say(words);
  }

  /** a4 or letter. */
  String paper() {
    return paper;
  }

  double width() {
    return width;
  }

  double height() {
    return height;
  }

  double labelWidth() {
    return labelWidth;
  }

  double labelHeight() {
    return labelHeight;
  }

  int labels() {
    return columns * rows;
  }

  /**
   * @param place counted from 0 along the rows
   */
  double x(int place) {
    return left + place % columns * across;
  }

  /**
   * @param place counted from 0 along the rows
   */
  double y(int place) {
    return top + place / columns * down;
  }
}
