package vestiary.inventory;

import static vestiary.web.Speech.say;

import vestiary.web.Speech;

/** How pages and the API say how old an inventory is. */
final class InventoryWords {

  private InventoryWords() {}

  /** For example "Its last inventory is of 12 October 2021: older than 36 months. ..." */
  static String age(ReadInventories.Inventory one) {
    String last =
        one.last().stream()
            .map(date -> say("Its last inventory is of %s", Speech.dateAndYear(date)))
            .findFirst()
            .orElse("");
    return switch (one.age()) {
      case CURRENT -> last + ".";
      case DUE -> last + say(": older than %d months. It is due.", InventoryAge.DUE_MONTHS);
      case OLD ->
          last
              + say(
                  ": older than %d months. Take stock before the list is relied on.",
                  InventoryAge.OLD_MONTHS);
      case NEVER -> say("No inventory is known. Take stock, or say when the last was made.");
    };
  }
}
