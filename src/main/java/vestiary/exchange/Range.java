package vestiary.exchange;

import static vestiary.web.Speech.say;

import java.util.Optional;

/**
 * Whole numbers that a cell may hold, both ends included: the bounds to which forms and the API
 * hold the same number.
 */
record Range(int least, int most) {

  /** Minutes that a Mass or other liturgy lasts. */
  static final Range LENGTH = new Range(5, 360);

  /** Concelebrants or deacons at one Mass. */
  static final Range MINISTERS = new Range(0, 200);

  /** Those who bring something of their own to one Mass. */
  static final Range BRINGING = new Range(1, 200);

  /** Minutes of set-out or clearance that are usual in a church or cluster. */
  static final Range LEAD = new Range(0, 240);

  /** Minutes of set-out chosen for one Mass. */
  static final Range CHOSEN_LEAD = new Range(1, 240);

  /** Minutes between two Masses for which one set may serve. */
  static final Range TURN = new Range(0, 60);

  /** Minutes on the road between two churches of one cluster, up to a day. */
  static final Range JOURNEY = new Range(1, 1_440);

  /** Masses a priest may celebrate on one day. */
  static final Range PERMITTED = new Range(1, 9);

  /** The number written so, or empty if it is none of these. */
  Optional<Integer> find(String text) {
    return Optional.of(text)
        .filter(written -> written.matches("[+-]?\\d{1,9}"))
        .map(Integer::valueOf)
        .filter(number -> number >= least && number <= most);
  }

  /** Such as "from 5 to 360". */
  @Override
  public String toString() {
    return say("from %d to %d", least, most);
  }
}
