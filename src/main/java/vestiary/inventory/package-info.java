/**
 * What a church owns and whether it is all there: the inventory, what things are worth, and the
 * walk through the sacristy that makes it true again. Start at {@link vestiary.inventory.TakeStock}
 * and {@link vestiary.inventory.ReadInventories}.
 */
package vestiary.inventory;
