package vestiary.calendar;

import java.util.List;

/**
 * What one day offers, before its evening is settled.
 *
 * @param celebrations the kept one first
 */
record DayChoice(
    int day, List<Celebration> celebrations, List<Omission> omitted, boolean transferred) {

  Celebration kept() {
    return celebrations.get(0);
  }
}
