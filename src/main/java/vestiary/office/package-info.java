/**
 * The sheet that the bishop's office gets before he comes: what it says, when it is due, whether it
 * was sent. Start at {@link vestiary.office.KeepOfficeSheet}; {@link vestiary.office.ReadDueSheets}
 * says which are late.
 */
package vestiary.office;
