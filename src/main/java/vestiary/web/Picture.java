package vestiary.web;

/** Measures of drawn words and lines, in units of a picture whose letters are 15 units high. */
public final class Picture {

  /** A letter's mean width, over a name or longer, when a phone shows it a quarter larger. */
  private static final double LETTER = 8.8;

  private Picture() {}

  /** About how wide the words will stand; a little generous, so that nothing overlaps. */
  public static double widthOf(String words) {
    return words.length() * LETTER;
  }

  /** To one decimal, which is finer than a printer's dot. */
  public static double rounded(double length) {
    return Math.round(length * 10) / 10.0;
  }

  /** {@code 09:05} for 545; minutes since the midnight that began the day, also past the next. */
  public static String clock(int minutes) {
    return "%02d:%02d".formatted(minutes / 60 % 24, minutes % 60);
  }
}
