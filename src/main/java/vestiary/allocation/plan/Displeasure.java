package vestiary.allocation.plan;

/**
 * What people would rather have otherwise, and how much each case of it weighs. What weighs how
 * much is common practice, no source.
 */
public enum Displeasure {
  /** A piece is meant for days of another grade. */
  OTHER_GRADE(4),
  /** A piece has a tone of the colour that is another season's. */
  OTHER_SHADE(4),
  /** A piece can be worn and does not suit the wearer's height. */
  BAD_FIT(6),
  /**
   * Those who wear chasubles at one Mass are not all in one suit, and some suit would be lawful.
   */
  SEVERAL_SUITS(16),
  /** A chasuble or dalmatic is worn without the stole of its set. More than all else together. */
  MIXED(100),
  /** The owner of a piece must be asked about a journey. */
  OWNER_ASKED(3),
  /** A piece goes on a journey at all, so that no more ride than are needed. */
  RIDING(1);

  private final int weight;

  Displeasure(int weight) {
    this.weight = weight;
  }

  public int weight() {
    return weight;
  }

  /** How little a piece is liked for a wearer and a Mass, whatever else is worn. */
  public static int at(Occasion occasion, Fit fit, Traits traits) {
    return (differ(occasion.grade(), traits.grade()) ? OTHER_GRADE.weight : 0)
        + (differ(occasion.shade(), traits.shade()) ? OTHER_SHADE.weight : 0)
        + (fit.suits(traits.length()) ? 0 : BAD_FIT.weight);
  }

  /** How little people like that a piece is carried, each journey. */
  public static int ofJourney(Traits traits) {
    return RIDING.weight + (traits.onAsking() ? OWNER_ASKED.weight : 0);
  }

  private static boolean differ(String wanted, String given) {
    return !wanted.isEmpty() && !given.isEmpty() && !wanted.equals(given);
  }
}
