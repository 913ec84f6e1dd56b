package vestiary.allocation.flow;

/**
 * A journey that something may be carried on, as early as the one time and as late as the other
 * allow.
 *
 * @param ready when what is carried can leave at the earliest, in seconds
 * @param due when it must be there
 * @param who travels that way anyway; empty if the journey is made for it
 */
public record Trip(int from, int to, long ready, long due, String who) {

  boolean isRide() {
    return !who.isEmpty();
  }
}
