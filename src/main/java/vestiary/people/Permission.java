package vestiary.people;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * How many Masses the local ordinary lets a priest say on one day, as it stands in the file: two
 * for a just cause, three on Sundays and holy days of obligation where pastoral need asks for it.
 *
 * <p>Source: canon 905 §2.
 *
 * @param weekday Masses on a weekday, 1 to 9
 * @param sunday Masses on Sundays and holy days of obligation, 1 to 9
 * @param grantedBy who granted it, in words; may be empty
 * @param granted when, or none if it is not known
 */
public record Permission(int weekday, int sunday, String grantedBy, List<LocalDate> granted) {

  public Permission {
    granted = List.copyOf(granted);
  }

  /** The day on which it was granted. */
  public Optional<LocalDate> findGranted() {
    return granted.stream().findFirst();
  }
}
