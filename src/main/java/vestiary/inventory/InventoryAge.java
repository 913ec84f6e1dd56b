package vestiary.inventory;

import java.time.LocalDate;
import java.util.List;
import vestiary.calendar.Term;

/**
 * How old an inventory is.
 *
 * <p>Source: CIC 1283, 2°–3°, asks for an inventory on taking office and for every change in it,
 * and names no interval. One year: altar-guild advice (Rhode Island, 2008–2011). Three years:
 * Diocese of Springfield in Illinois, contents list at least every five years and better every
 * three.
 */
public enum InventoryAge implements Term {
  CURRENT,
  /** Twelve months or older. */
  DUE,
  /** Thirty-six months or older. */
  OLD,
  /** Nobody said that there ever was one. */
  NEVER;

  static final int DUE_MONTHS = 12;
  static final int OLD_MONTHS = 36;

  /**
   * @param last date of the last inventory, or none
   */
  static InventoryAge of(List<LocalDate> last, LocalDate today) {
    if (last.isEmpty()) {
      return NEVER;
    }
    if (!last.get(0).plusMonths(OLD_MONTHS).isAfter(today)) {
      return OLD;
    }
    return last.get(0).plusMonths(DUE_MONTHS).isAfter(today) ? CURRENT : DUE;
  }
}
