package vestiary.allocation.flow;

/**
 * A time at a church, in seconds: of a Mass, or of a piece held or away.
 *
 * @param place number of the church
 * @param setOut from when it binds a piece that comes from elsewhere or from the cupboard
 * @param start from when it binds a piece that stays out from the Mass before
 * @param end until when it binds a piece that stays out for the next Mass
 * @param cleared until when it binds any other
 */
public record Visit(int place, long setOut, long start, long end, long cleared) {

  /** Where a piece lies before everything. */
  static Visit beforeAll(int place) {
    return new Visit(place, Roads.ALWAYS, Roads.ALWAYS, Roads.NEVER, Roads.ALWAYS);
  }

  /** Whether a piece can be at the other next. */
  public boolean precedes(Visit other, Roads roads) {
    return turnsInto(other, roads) || cleared + roads.between(place, other.place) <= other.setOut;
  }

  /** Whether it can by staying out, without being cleared. */
  boolean turnsInto(Visit other, Roads roads) {
    return place == other.place && end + roads.turn() <= other.start;
  }
}
