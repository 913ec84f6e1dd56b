package vestiary.review;

import java.util.List;
import java.util.UUID;

/**
 * Something that stood in the way when somebody looked at the week.
 *
 * @param id the same as long as the same Masses clash for the same reason
 * @param severity as in the API
 * @param masses ids of those concerned
 * @param about where and when
 * @param title states the count, without a full stop
 */
record ClashSeen(String id, String severity, List<UUID> masses, String about, String title) {

  ClashSeen {
    masses = List.copyOf(masses);
  }
}
