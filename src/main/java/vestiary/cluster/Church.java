package vestiary.cluster;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import vestiary.calendar.Proper;
import vestiary.vesting.ChurchId;

/**
 * A building of a parish, with its sacristy.
 *
 * @param slug short name in addresses and files, lower case
 * @param title mystery or saint in whose honour it is dedicated, as people say it
 * @param propers all that it keeps beside the calendar: what binds all churches of the cluster, its
 *     own days, its title and its dedication
 * @param dedications the day of its dedication, or none if it is not known
 * @param setOut before a Sunday or holy-day Mass, until which vestments are laid out
 * @param clearance after a Mass, until everything is put away
 * @param coordinates where it stands, or none if it is not known
 * @param version counts the changes made to it, to notice a lost race
 */
public record Church(
    ChurchId id,
    String slug,
    String name,
    String parish,
    String place,
    String title,
    List<Proper> propers,
    List<LocalDate> dedications,
    Duration setOut,
    Duration clearance,
    List<Coordinates> coordinates,
    int version) {

  public Church {
    propers = List.copyOf(propers);
    dedications = List.copyOf(dedications);
    coordinates = List.copyOf(coordinates);
  }

  /** The day on which the building was dedicated, year included. */
  public Optional<LocalDate> findDedication() {
    return dedications.stream().findFirst();
  }

  /** Degrees, north and east positive (WGS 84). */
  public record Coordinates(double latitude, double longitude) {}
}
