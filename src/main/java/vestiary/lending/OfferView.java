package vestiary.lending;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;

/**
 * The form by which pieces are offered.
 *
 * @param stores what may leave, church by church
 * @param chosenError what is wrong with what was ticked; empty if nothing is
 * @param ownersError likewise of the owners
 * @param cautions how such things travel unharmed
 */
record OfferView(
    Frame frame,
    String problem,
    Field to,
    Field from,
    Field until,
    List<Store> stores,
    String chosenError,
    boolean ownersAsked,
    String ownersError,
    Field note,
    List<String> cautions) {

  OfferView {
    stores = List.copyOf(stores);
    cautions = List.copyOf(cautions);
  }

  /**
   * @param open whether something of it is ticked
   */
  record Store(String church, boolean open, List<Choice.Option> things) {
    Store {
      things = List.copyOf(things);
    }
  }
}
