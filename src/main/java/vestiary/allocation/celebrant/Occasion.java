package vestiary.allocation.celebrant;

/** For what people come to a Mass, which says whether it can be left out. */
public enum Occasion {

  /** Taking part in it fulfils an obligation (canon 1248). */
  PRECEPT,

  /**
   * A rite for certain persons at an hour that is settled with them: a funeral, a wedding. It
   * cannot be left out as a Mass of a weekday can (common practice, no source).
   */
  RITE,

  OTHER;

  /** Whether people come first for whom there is no other Mass. */
  boolean comesFirst() {
    return this != OTHER;
  }
}
