package vestiary.inventory;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import vestiary.cluster.Church;
import vestiary.cluster.ChurchNotices;

/** Says of a church that its inventory is old. */
@ApplicationScoped
@Transactional
class OldInventories implements ChurchNotices {

  private final ReadInventories inventories;

  OldInventories(ReadInventories inventories) {
    this.inventories = inventories;
  }

  @Override
  public List<String> of(Church church) {
    ReadInventories.Inventory one = inventories.get(church.slug());
    return one.age() == InventoryAge.CURRENT ? List.of() : List.of(InventoryWords.age(one));
  }
}
