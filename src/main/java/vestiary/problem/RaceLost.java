package vestiary.problem;

/**
 * Whether somebody else was quicker: two wanted the same at one moment, and the database let one of
 * them have it. Whoever lost may try again, and is told who won.
 */
public final class RaceLost {

  private RaceLost() {}

  /** Whether that lies behind a failure. */
  public static boolean isBehind(Throwable failure) {
    return DatabaseRefusals.isRaceLost(failure);
  }
}
