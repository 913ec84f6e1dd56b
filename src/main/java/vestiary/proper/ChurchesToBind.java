package vestiary.proper;

import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import vestiary.calendar.CalendarSettings;

/**
 * What propers are held against. The cluster answers, which reads propers and is not known here.
 */
public interface ChurchesToBind {

  /** The calendar that the cluster keeps. */
  CalendarSettings settings();

  /** All churches, in the order in which people list them. */
  List<TitledChurch> titled();

  /** By whose clock it is today or tomorrow. */
  ZoneId zone();

  /** In which pages name celebrations. */
  Locale language();

  /** Waits until nobody else changes what propers depend on, until this transaction ends. */
  void waitForTurn();
}
