package vestiary.vesting;

/**
 * How long an alb suits whom: it reaches to the ankles, so that one too short looks poor and one
 * too long trips its wearer. Lengths are of the back, from the neck to the hem, in centimetres.
 *
 * <p>Source: a published pattern of a Roman-style alb gives back lengths of 54, 56, 58, 60 and 62
 * inches for heights of 5'3" to 5'5", 5'6" to 5'8", 5'9" to 5'11", 6'0" to 6'3", and over 6'3":
 * between 82 and 85 hundredths of the height. How much more or less still does: common practice, no
 * source.
 *
 * @param height of the wearer in centimetres; 0 if it is not known, and then every alb suits
 */
public record AlbLength(int height) {

  /** Nobody has said how tall he is. */
  public static final AlbLength UNKNOWN = new AlbLength(0);

  /** The least and the most that is believed of a grown man. */
  public static final int SHORTEST_MAN = 120;

  public static final int TALLEST_MAN = 230;

  private static final int HUNDREDTHS = 83;

  /** So many centimetres more than suits best still do. */
  public static final int LONGER = 4;

  /** So many centimetres less than suits best still do. */
  public static final int SHORTER = 10;

  public AlbLength {
    if (height != 0 && (height < SHORTEST_MAN || height > TALLEST_MAN)) {
      throw new IllegalArgumentException(
          "Heights are from %d to %d cm, not %d".formatted(SHORTEST_MAN, TALLEST_MAN, height));
    }
  }

  public boolean isKnown() {
    return height > 0;
  }

  /** The length that suits best; 0 if the height is not known. */
  public int best() {
    return Math.round(height * HUNDREDTHS / 100f);
  }

  /** The longest in which he does not trip. */
  public int longest() {
    return isKnown() ? best() + LONGER : Integer.MAX_VALUE;
  }

  /** The shortest that still looks well. */
  public int shortest() {
    return isKnown() ? best() - SHORTER : 0;
  }

  /** Whether an alb whose label says that suits; one of unknown length is taken to. */
  public boolean suits(String size) {
    int length = centimetres(size);
    return length == 0 || shortest() <= length && length <= longest();
  }

  /** Whether he would tread on its hem. */
  public boolean trips(String size) {
    return centimetres(size) > longest();
  }

  /**
   * How far an alb is from what suits best; too long counts ten times, since too long trips. An alb
   * of unknown length comes after those that suit, and before those that do not.
   */
  public int strain(String size) {
    int length = centimetres(size);
    if (!isKnown()) {
      return 0;
    }
    if (length == 0) {
      return SHORTER;
    }
    int over = length - best();
    return over > LONGER ? over * SHORTER : Math.abs(over);
  }

  /** The centimetres on a label, as in 132 or "132 cm"; 0 if it says anything else. */
  public static int centimetres(String size) {
    String digits = size.strip().replaceFirst("\\s*cm$", "");
    return digits.matches("\\d{2,3}") ? Integer.parseInt(digits) : 0;
  }
}
