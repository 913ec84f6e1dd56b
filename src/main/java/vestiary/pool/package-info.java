/**
 * What vestments there are: pieces, sets and suits, where they belong, and when they are in care.
 * Knows nothing of Masses. Start at {@link vestiary.pool.ReadPool}.
 */
package vestiary.pool;
