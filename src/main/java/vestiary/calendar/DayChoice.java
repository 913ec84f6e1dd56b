package vestiary.calendar;

import java.util.List;

/**
 * What one day offers, before its evening is settled.
 *
 * @param celebrations the kept one first
 * @param transfers how the kept one came here from another date; empty if it stands on its own
 */
record DayChoice(
    int day, List<Celebration> celebrations, List<Omission> omitted, List<Transfer> transfers) {

  Celebration kept() {
    return celebrations.get(0);
  }
}
