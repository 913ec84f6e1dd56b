package vestiary.allocation.flow;

/** What a program is asked about. */
public enum Manner {
  /** Whether needs can be met at all, whatever has to be carried, with pieces told apart by law. */
  COVERAGE,
  /** As coverage, but sets may be parted where that helps. */
  COVERAGE_PARTED,
  /** Journeys too, each piece's by itself. */
  PIECES,
  /** Journeys too, one for all that rides together. */
  CARRIAGES;

  boolean isCoverage() {
    return this == COVERAGE || this == COVERAGE_PARTED;
  }
}
