package vestiary.inventory;

import vestiary.web.English;

/** How pages and the API say how old an inventory is. */
final class InventoryWords {

  private InventoryWords() {}

  /** For example "Its last inventory is of 12 October 2021: older than 36 months. ..." */
  static String age(ReadInventories.Inventory one) {
    String last =
        one.last().stream()
            .map(date -> "Its last inventory is of %s".formatted(English.dateAndYear(date)))
            .findFirst()
            .orElse("");
    return switch (one.age()) {
      case CURRENT -> last + ".";
      case DUE -> last + ": older than %d months. It is due.".formatted(InventoryAge.DUE_MONTHS);
      case OLD ->
          last
              + ": older than %d months. Take stock before the list is relied on."
                  .formatted(InventoryAge.OLD_MONTHS);
      case NEVER -> "No inventory is known. Take stock, or say when the last was made.";
    };
  }
}
