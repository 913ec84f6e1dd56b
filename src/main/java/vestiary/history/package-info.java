/**
 * Who changed what, from what to what. The database writes it (migration V016); this room reads it
 * and says it in words. Start at {@link vestiary.history.ReadHistory}.
 */
package vestiary.history;
