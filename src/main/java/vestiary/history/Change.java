package vestiary.history;

import java.time.ZonedDateTime;
import java.util.List;

/**
 * One change in words.
 *
 * @param at by the cluster's clock
 * @param who what whoever made it is called now
 * @param device the shared device on which it was made; empty for any other
 * @param thing what was changed, for example "Mass at Saint Anne, 8 December 2026, 18:30"
 * @param deed entered, changed or removed
 * @param address of the history of that one thing
 * @param fields those alone that were changed, in alphabetical order of their names
 */
record Change(
    ZonedDateTime at,
    String who,
    String device,
    String thing,
    String deed,
    String address,
    List<Field> fields) {

  Change {
    fields = List.copyOf(fields);
  }

  /**
   * @param before empty where there was nothing
   * @param after empty where nothing is left
   */
  record Field(String name, String before, String after) {}
}
