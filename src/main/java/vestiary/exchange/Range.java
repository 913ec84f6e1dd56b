package vestiary.exchange;

/**
 * Whole numbers that a cell may hold, both ends included. These bounds catch slips of the pen; what
 * a cluster permits is a setting.
 */
record Range(int least, int most) {

  /** Minutes that a Mass or other liturgy lasts. */
  static final Range LENGTH = new Range(5, 360);

  /** Concelebrants or deacons at one Mass. */
  static final Range MINISTERS = new Range(0, 200);

  /** Minutes of set-out or clearance. */
  static final Range LEAD = new Range(0, 240);

  /** Minutes between two Masses for which one set may serve. */
  static final Range TURN = new Range(0, 60);

  /** Minutes on the road between two churches of one cluster. */
  static final Range JOURNEY = new Range(1, 600);

  /** Masses a priest may celebrate on one day. */
  static final Range PERMITTED = new Range(1, 4);

  static final Range SEATS = new Range(1, 20_000);

  /** Height of a person in centimetres. */
  static final Range HEIGHT = new Range(100, 230);

  /** Length of a vestment's back in centimetres. */
  static final Range BACK = new Range(20, 300);

  boolean contains(int number) {
    return number >= least && number <= most;
  }

  @Override
  public String toString() {
    return least + " to " + most;
  }
}
