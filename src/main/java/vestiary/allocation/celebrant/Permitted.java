package vestiary.allocation.celebrant;

/**
 * How many Masses a priest may celebrate on one day by the leave that the local ordinary has given.
 * Concelebrating counts. He can give leave for two on any day, where priests are lacking, and for
 * three on Sundays and holy days of obligation, where pastoral need asks for it: no more.
 *
 * <p>Source: Code of Canon Law, canon 905.
 *
 * @param weekday 1 or more; what is beyond two counts as two
 * @param sunday on Sundays and holy days, 1 or more; what is beyond three counts as three
 */
public record Permitted(int weekday, int sunday) {

  private static final int MOST_ON_A_WEEKDAY = 2;
  private static final int MOST_ON_A_SUNDAY = 3;

  /** Without any leave. */
  public static final Permitted ONE = new Permitted(1, 1);

  public Permitted {
    if (weekday < 1 || sunday < 1) {
      throw new IllegalArgumentException("One Mass a day needs no leave.");
    }
    weekday = Math.min(weekday, MOST_ON_A_WEEKDAY);
    sunday = Math.min(sunday, MOST_ON_A_SUNDAY);
  }

  /** How many that is on a day, what the law itself allows included. */
  public int most(CountedDay day) {
    return Math.max(day.byLaw(), day.obliges() ? sunday : weekday);
  }
}
