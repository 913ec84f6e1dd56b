package vestiary.inventory;

import java.util.List;
import vestiary.web.Field;
import vestiary.web.Frame;

/**
 * The inventory of one church, to be looked at and to be signed.
 *
 * @param id of the church
 * @param age how old it is, in a sentence
 * @param kinds precious things first, others then; each with its pieces
 * @param valued whether the column of values is shown
 * @param withdrawn sentences, by code
 * @param date of one that was made elsewhere, as it was typed
 */
record InventoryView(
    Frame frame,
    String id,
    String slug,
    String church,
    String parish,
    String age,
    String lead,
    boolean valued,
    List<Kind> kinds,
    List<String> withdrawn,
    Field date) {

  InventoryView {
    kinds = List.copyOf(kinds);
    withdrawn = List.copyOf(withdrawn);
  }

  /**
   * @param name for example "Precious for their art or history"
   */
  record Kind(String name, List<Thing> things) {
    Kind {
      things = List.copyOf(things);
    }

    /** Whether any of them is to be seen. */
    public boolean pictured() {
      return things.stream().anyMatch(thing -> !thing.picture().isEmpty());
    }
  }

  /**
   * @param what for example "Chasuble, white"
   * @param told description, provenance and when it was acquired
   * @param where place, and who keeps it
   * @param whose its owner
   * @param value for example "1,500.00 USD"; empty if unknown or not shown
   * @param picture address of a small photograph; empty if there is none
   */
  record Thing(
      String code,
      String what,
      String told,
      String where,
      String whose,
      String condition,
      String value,
      String picture) {}
}
