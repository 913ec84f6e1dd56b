package vestiary.allocation.flow;

/**
 * Which time a program is about, in seconds.
 *
 * @param from what ended before, journeys included, does not matter any more
 * @param until what begins after does not matter yet
 * @param anywhere whether a piece can have come to any church before the first Mass, the night
 *     being longer than any journey
 */
public record Extent(long from, long until, boolean anywhere) {

  /** All of it, pieces being where the situation has them in the beginning. */
  public static final Extent WHOLE = new Extent(Roads.ALWAYS, Roads.NEVER, false);
}
