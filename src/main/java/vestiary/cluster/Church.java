package vestiary.cluster;

import java.time.Duration;
import java.util.List;
import vestiary.calendar.Proper;
import vestiary.vesting.ChurchId;

/**
 * A building of a parish, with its sacristy.
 *
 * @param slug short name in addresses and files, lower case
 * @param title mystery or saint in whose honour it is dedicated, as people say it
 * @param propers what its title and dedication add to its calendar
 * @param setOut before a Sunday or holy-day Mass, until which vestments are laid out
 * @param clearance after a Mass, until everything is put away
 */
public record Church(
    ChurchId id,
    String slug,
    String name,
    String parish,
    String place,
    String title,
    List<Proper> propers,
    Duration setOut,
    Duration clearance) {

  public Church {
    propers = List.copyOf(propers);
  }
}
