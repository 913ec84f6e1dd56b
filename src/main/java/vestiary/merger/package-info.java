/**
 * A church closes, a parish is merged into another: what ends, what goes where, and what was
 * decreed. Ids, past Masses and history stay as they are. Start at {@link
 * vestiary.merger.CloseChurch}.
 */
package vestiary.merger;
